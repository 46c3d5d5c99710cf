/** Every rule, by id. A test holds that none is missing and that each id is the path of its file. */
import { acceptedMatchesNothing } from './accepted/matches-nothing.ts';
import { acceptedOutOfDate } from './accepted/out-of-date.ts';
import { acceptedUnknownRule } from './accepted/unknown-rule.ts';
import { assetCircularDependency } from './asset/circular-dependency.ts';
import { assetDependsOnItself } from './asset/depends-on-itself.ts';
import { assetUnused } from './asset/unused.ts';
import { memberContactNotGiven } from './member/contact-not-given.ts';
import { memberHoldsNothing } from './member/holds-nothing.ts';
import { memberNoCheckIn } from './member/no-check-in.ts';
import { memberNoLadder } from './member/no-ladder.ts';
import { memberNoPlace } from './member/no-place.ts';
import { memberNoRadio } from './member/no-radio.ts';
import { offsetUnusual } from './offset/unusual.ts';
import { placeUnused } from './place/unused.ts';
import { planCoordinatorMissing } from './plan/coordinator-missing.ts';
import { planEffectiveAfterReview } from './plan/effective-after-review.ts';
import { planReviewMissing } from './plan/review-missing.ts';
import { planReviewPast } from './plan/review-past.ts';
import { planZoneUnknown } from './plan/zone-unknown.ts';
import { referenceUnknown } from './reference/unknown.ts';
import type { Rule } from './rule.ts';
import { teamEmpty } from './team/empty.ts';
import { teamMemberTwice } from './team/member-twice.ts';
import { trialInTheFuture } from './trial/in-the-future.ts';
import { trialNothingHeardOnRung } from './trial/nothing-heard-on-rung.ts';

export const allRules: readonly Rule[] = [
  acceptedMatchesNothing,
  acceptedOutOfDate,
  acceptedUnknownRule,
  assetCircularDependency,
  assetDependsOnItself,
  assetUnused,
  memberContactNotGiven,
  memberHoldsNothing,
  memberNoCheckIn,
  memberNoLadder,
  memberNoPlace,
  memberNoRadio,
  offsetUnusual,
  placeUnused,
  planCoordinatorMissing,
  planEffectiveAfterReview,
  planReviewMissing,
  planReviewPast,
  planZoneUnknown,
  referenceUnknown,
  teamEmpty,
  teamMemberTwice,
  trialInTheFuture,
  trialNothingHeardOnRung,
];
