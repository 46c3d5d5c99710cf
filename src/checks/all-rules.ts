/** Every rule, by id. A test holds that none is missing and that each id is the path of its file. */
import { acceptedLaw } from './accepted/law.ts';
import { acceptedMatchesNothing } from './accepted/matches-nothing.ts';
import { acceptedOutOfDate } from './accepted/out-of-date.ts';
import { acceptedStandsTwice } from './accepted/stands-twice.ts';
import { acceptedUnknownRule } from './accepted/unknown-rule.ts';
import { acceptedWholeSection } from './accepted/whole-section.ts';
import { assetCircularDependency } from './asset/circular-dependency.ts';
import { assetDependsOnItself } from './asset/depends-on-itself.ts';
import { assetUnused } from './asset/unused.ts';
import { bandPlanCallingFrequencyAsWorkingChannel } from './band-plan/calling-frequency-as-working-channel.ts';
import { bandPlanInBeaconSegment } from './band-plan/in-beacon-segment.ts';
import { bandPlanInSatelliteSegment } from './band-plan/in-satellite-segment.ts';
import { bandPlanInWeakSignalSegment } from './band-plan/in-weak-signal-segment.ts';
import { bandPlanModelControlSegment } from './band-plan/model-control-segment.ts';
import { bandPlanPacketOutsidePlan } from './band-plan/packet-outside-plan.ts';
import { bandPlanRepeaterOutsidePlan } from './band-plan/repeater-outside-plan.ts';
import { bandPlanSimplexOnRepeaterFrequency } from './band-plan/simplex-on-repeater-frequency.ts';
import { bandPlanVoiceOnPacketSegment } from './band-plan/voice-on-packet-segment.ts';
import { bandPlanVoiceOutsidePlan } from './band-plan/voice-outside-plan.ts';
import { channelContradictsRepeater } from './channel/contradicts-repeater.ts';
import { channelDuplicate } from './channel/duplicate.ts';
import { channelHeldByNobody } from './channel/held-by-nobody.ts';
import { channelKnownToOne } from './channel/known-to-one.ts';
import { channelNameShownOddly } from './channel/name-shown-oddly.ts';
import { channelNamesAlikeByEar } from './channel/names-alike-by-ear.ts';
import { channelNamesAlikeByEye } from './channel/names-alike-by-eye.ts';
import { channelNamesAlikeWhenCut } from './channel/names-alike-when-cut.ts';
import { channelPacketUsedForVoice } from './channel/packet-used-for-voice.ts';
import { channelPrimaryHardToReach } from './channel/primary-hard-to-reach.ts';
import { channelSameName } from './channel/same-name.ts';
import { channelUnused } from './channel/unused.ts';
import { checkInClockChange } from './check-in/clock-change.ts';
import { checkInControlMissing } from './check-in/control-missing.ts';
import { checkInLongerThanGap } from './check-in/longer-than-gap.ts';
import { checkInMissedLadderMissing } from './check-in/missed-ladder-missing.ts';
import { checkInNobodyExpected } from './check-in/nobody-expected.ts';
import { checkInOverlap } from './check-in/overlap.ts';
import { checkInRollCallOnListenChannel } from './check-in/roll-call-on-listen-channel.ts';
import { checkInSeriesOver } from './check-in/series-over.ts';
import { checkInUtcAndLocalMix } from './check-in/utc-and-local-mix.ts';
import { checkInWatchWithoutEnd } from './check-in/watch-without-end.ts';
import { exposureCarriedPower } from './exposure/carried-power.ts';
import { exposureMastTooLow } from './exposure/mast-too-low.ts';
import { frequencyAdvisoryPlace } from './frequency/advisory-place.ts';
import { frequencyBandNotHeld } from './frequency/band-not-held.ts';
import { frequencyClosedLocally } from './frequency/closed-locally.ts';
import { frequencyClosedPlace } from './frequency/closed-place.ts';
import { frequencyConditional } from './frequency/conditional.ts';
import { frequencyEdgeSpill } from './frequency/edge-spill.ts';
import { frequencyEmissionNotAdmitted } from './frequency/emission-not-admitted.ts';
import { frequencyInputOutsideBand } from './frequency/input-outside-band.ts';
import { frequencyListenOnlyTransmitted } from './frequency/listen-only-transmitted.ts';
import { frequencyOffRaster } from './frequency/off-raster.ts';
import { frequencyOutputOutsideBand } from './frequency/output-outside-band.ts';
import { frequencyOutsideAllocation } from './frequency/outside-allocation.ts';
import { interferenceAdjacentChannel } from './interference/adjacent-channel.ts';
import { interferenceFifthOrder } from './interference/fifth-order.ts';
import { interferenceHarmonic } from './interference/harmonic.ts';
import { interferenceSamePairSameTone } from './interference/same-pair-same-tone.ts';
import { interferenceThirdOrder } from './interference/third-order.ts';
import { ladderDigipeaterOffChannel } from './ladder/digipeater-off-channel.ts';
import { ladderForNobody } from './ladder/for-nobody.ts';
import { ladderGradesOutOfOrder } from './ladder/grades-out-of-order.ts';
import { ladderHangsOnOne } from './ladder/hangs-on-one.ts';
import { ladderListenChannel } from './ladder/listen-channel.ts';
import { ladderMailboxOffChannel } from './ladder/mailbox-off-channel.ts';
import { ladderMeetWithoutTime } from './ladder/meet-without-time.ts';
import { ladderNoEmergencyRung } from './ladder/no-emergency-rung.ts';
import { ladderNoPrimaryRung } from './ladder/no-primary-rung.ts';
import { ladderNoTime } from './ladder/no-time.ts';
import { ladderReachMissing } from './ladder/reach-missing.ts';
import { ladderReachNotOnChannel } from './ladder/reach-not-on-channel.ts';
import { ladderReachSelfOnly } from './ladder/reach-self-only.ts';
import { ladderSameChannelTwice } from './ladder/same-channel-twice.ts';
import { licenceAuthorityMissing } from './licence/authority-missing.ts';
import { licenceCallMalformed } from './licence/call-malformed.ts';
import { licenceCallMissing } from './licence/call-missing.ts';
import { licenceClassMissing } from './licence/class-missing.ts';
import { licenceClassUnknown } from './licence/class-unknown.ts';
import { licenceExpired } from './licence/expired.ts';
import { licenceExpiresSoon } from './licence/expires-soon.ts';
import { licenceFamilySharedOddly } from './licence/family-shared-oddly.ts';
import { licenceMissing } from './licence/missing.ts';
import { memberContactNotGiven } from './member/contact-not-given.ts';
import { memberHoldsNothing } from './member/holds-nothing.ts';
import { memberNoCheckIn } from './member/no-check-in.ts';
import { memberNoLadder } from './member/no-ladder.ts';
import { memberNoPlace } from './member/no-place.ts';
import { memberNoRadio } from './member/no-radio.ts';
import { offsetFixedByRule } from './offset/fixed-by-rule.ts';
import { offsetUnusual } from './offset/unusual.ts';
import { offsetWrongSign } from './offset/wrong-sign.ts';
import { offsetZero } from './offset/zero.ts';
import { packetCallMalformed } from './packet/call-malformed.ts';
import { packetDigipeaterTwice } from './packet/digipeater-twice.ts';
import { packetDigipeaterUnused } from './packet/digipeater-unused.ts';
import { packetMailboxUnused } from './packet/mailbox-unused.ts';
import { packetManyDigipeaters } from './packet/many-digipeaters.ts';
import { packetRouteChannelMismatch } from './packet/route-channel-mismatch.ts';
import { packetSameAddressTwice } from './packet/same-address-twice.ts';
import { packetTooManyDigipeaters } from './packet/too-many-digipeaters.ts';
import { packetVoiceModeChannel } from './packet/voice-mode-channel.ts';
import { pathAgainstTrial } from './path/against-trial.ts';
import { pathBeyondHorizon } from './path/beyond-horizon.ts';
import { pathCheckInClosed } from './path/check-in-closed.ts';
import { pathRungClosed } from './path/rung-closed.ts';
import { pathRungDoubtful } from './path/rung-doubtful.ts';
import { pathRungUntried } from './path/rung-untried.ts';
import { placeFarFromOthers } from './place/far-from-others.ts';
import { placeTwoAtOneSpot } from './place/two-at-one-spot.ts';
import { placeUnused } from './place/unused.ts';
import { planCoordinatorMissing } from './plan/coordinator-missing.ts';
import { planEffectiveAfterReview } from './plan/effective-after-review.ts';
import { planReviewMissing } from './plan/review-missing.ts';
import { planReviewPast } from './plan/review-past.ts';
import { planZoneUnknown } from './plan/zone-unknown.ts';
import { powerNoLawfulSetting } from './power/no-lawful-setting.ts';
import { powerOverLawful } from './power/over-lawful.ts';
import { powerOverLocalLimit } from './power/over-local-limit.ts';
import { powerOverRadios } from './power/over-radios.ts';
import { powerStationOverLawful } from './power/station-over-lawful.ts';
import { powerUnknownSetting } from './power/unknown-setting.ts';
import { privilegeControlOperatorLacks } from './privilege/control-operator-lacks.ts';
import { privilegeNobodyMayTransmit } from './privilege/nobody-may-transmit.ts';
import { privilegeOutsideClass } from './privilege/outside-class.ts';
import { radioHeldByNobody } from './radio/held-by-nobody.ts';
import { radioHoldsNothing } from './radio/holds-nothing.ts';
import { radioMemoriesACount } from './radio/memories-a-count.ts';
import { radioNoMode } from './radio/no-mode.ts';
import { radioOffStep } from './radio/off-step.ts';
import { radioReceiveRange } from './radio/receive-range.ts';
import { radioSlotOutsideMemories } from './radio/slot-outside-memories.ts';
import { radioTransmitRange } from './radio/transmit-range.ts';
import { radioTransmitsOutsideReceives } from './radio/transmits-outside-receives.ts';
import { recordStaleRadio } from './record/stale-radio.ts';
import { referenceUnknown } from './reference/unknown.ts';
import { repeaterCallMissing } from './repeater/call-missing.ts';
import { repeaterForbiddenSegment } from './repeater/forbidden-segment.ts';
import { repeaterPairReversed } from './repeater/pair-reversed.ts';
import { repeaterUnused } from './repeater/unused.ts';
import { repeaterWithoutTone } from './repeater/without-tone.ts';
import type { Rule } from './rule.ts';
import { serviceAntennaTooHigh } from './service/antenna-too-high.ts';
import { serviceCertifiedForBoth } from './service/certified-for-both.ts';
import { serviceNotCertified } from './service/not-certified.ts';
import { serviceRepeaterNotAllowed } from './service/repeater-not-allowed.ts';
import { serviceRoleOnlyChannel } from './service/role-only-channel.ts';
import { serviceStationNotAdmitted } from './service/station-not-admitted.ts';
import { serviceStoreAndForwardNotAllowed } from './service/store-and-forward-not-allowed.ts';
import { serviceUnknownService } from './service/unknown-service.ts';
import { serviceWithoutFrequency } from './service/without-frequency.ts';
import { standardBetweenChannels } from './standard/between-channels.ts';
import { standardFrequencyOfPublishedChannelTyped } from './standard/frequency-of-published-channel-typed.ts';
import { standardUnknownChannel } from './standard/unknown-channel.ts';
import { teamEmpty } from './team/empty.ts';
import { teamMemberTwice } from './team/member-twice.ts';
import { toneDcsAlias } from './tone/dcs-alias.ts';
import { toneDcsInverseInUse } from './tone/dcs-inverse-in-use.ts';
import { toneMainsHarmonic } from './tone/mains-harmonic.ts';
import { toneNeighbouringTones } from './tone/neighbouring-tones.ts';
import { toneNotStandard } from './tone/not-standard.ts';
import { toneRadioCannotSend } from './tone/radio-cannot-send.ts';
import { trialInTheFuture } from './trial/in-the-future.ts';
import { trialNothingHeardOnRung } from './trial/nothing-heard-on-rung.ts';
import { widthOverBandPlan } from './width/over-band-plan.ts';
import { widthOverLawful } from './width/over-lawful.ts';
import { widthRadioCannotSet } from './width/radio-cannot-set.ts';

export const allRules: readonly Rule[] = [
  acceptedLaw,
  acceptedMatchesNothing,
  acceptedOutOfDate,
  acceptedStandsTwice,
  acceptedUnknownRule,
  acceptedWholeSection,
  assetCircularDependency,
  assetDependsOnItself,
  assetUnused,
  bandPlanCallingFrequencyAsWorkingChannel,
  bandPlanInBeaconSegment,
  bandPlanInSatelliteSegment,
  bandPlanInWeakSignalSegment,
  bandPlanModelControlSegment,
  bandPlanPacketOutsidePlan,
  bandPlanRepeaterOutsidePlan,
  bandPlanSimplexOnRepeaterFrequency,
  bandPlanVoiceOnPacketSegment,
  bandPlanVoiceOutsidePlan,
  channelContradictsRepeater,
  channelDuplicate,
  channelHeldByNobody,
  channelKnownToOne,
  channelNameShownOddly,
  channelNamesAlikeByEar,
  channelNamesAlikeByEye,
  channelNamesAlikeWhenCut,
  channelPacketUsedForVoice,
  channelPrimaryHardToReach,
  channelSameName,
  channelUnused,
  checkInClockChange,
  checkInControlMissing,
  checkInLongerThanGap,
  checkInMissedLadderMissing,
  checkInNobodyExpected,
  checkInOverlap,
  checkInRollCallOnListenChannel,
  checkInSeriesOver,
  checkInUtcAndLocalMix,
  checkInWatchWithoutEnd,
  exposureCarriedPower,
  exposureMastTooLow,
  frequencyAdvisoryPlace,
  frequencyBandNotHeld,
  frequencyClosedLocally,
  frequencyClosedPlace,
  frequencyConditional,
  frequencyEdgeSpill,
  frequencyEmissionNotAdmitted,
  frequencyInputOutsideBand,
  frequencyListenOnlyTransmitted,
  frequencyOffRaster,
  frequencyOutputOutsideBand,
  frequencyOutsideAllocation,
  interferenceAdjacentChannel,
  interferenceFifthOrder,
  interferenceHarmonic,
  interferenceSamePairSameTone,
  interferenceThirdOrder,
  ladderDigipeaterOffChannel,
  ladderForNobody,
  ladderGradesOutOfOrder,
  ladderHangsOnOne,
  ladderListenChannel,
  ladderMailboxOffChannel,
  ladderMeetWithoutTime,
  ladderNoEmergencyRung,
  ladderNoPrimaryRung,
  ladderNoTime,
  ladderReachMissing,
  ladderReachNotOnChannel,
  ladderReachSelfOnly,
  ladderSameChannelTwice,
  licenceAuthorityMissing,
  licenceCallMalformed,
  licenceCallMissing,
  licenceClassMissing,
  licenceClassUnknown,
  licenceExpired,
  licenceExpiresSoon,
  licenceFamilySharedOddly,
  licenceMissing,
  memberContactNotGiven,
  memberHoldsNothing,
  memberNoCheckIn,
  memberNoLadder,
  memberNoPlace,
  memberNoRadio,
  offsetFixedByRule,
  offsetUnusual,
  offsetWrongSign,
  offsetZero,
  packetCallMalformed,
  packetDigipeaterTwice,
  packetDigipeaterUnused,
  packetMailboxUnused,
  packetManyDigipeaters,
  packetRouteChannelMismatch,
  packetSameAddressTwice,
  packetTooManyDigipeaters,
  packetVoiceModeChannel,
  pathAgainstTrial,
  pathBeyondHorizon,
  pathCheckInClosed,
  pathRungClosed,
  pathRungDoubtful,
  pathRungUntried,
  placeFarFromOthers,
  placeTwoAtOneSpot,
  placeUnused,
  planCoordinatorMissing,
  planEffectiveAfterReview,
  planReviewMissing,
  planReviewPast,
  planZoneUnknown,
  powerNoLawfulSetting,
  powerOverLawful,
  powerOverLocalLimit,
  powerOverRadios,
  powerStationOverLawful,
  powerUnknownSetting,
  privilegeControlOperatorLacks,
  privilegeNobodyMayTransmit,
  privilegeOutsideClass,
  radioHeldByNobody,
  radioHoldsNothing,
  radioMemoriesACount,
  radioNoMode,
  radioOffStep,
  radioReceiveRange,
  radioSlotOutsideMemories,
  radioTransmitRange,
  radioTransmitsOutsideReceives,
  recordStaleRadio,
  referenceUnknown,
  repeaterCallMissing,
  repeaterForbiddenSegment,
  repeaterPairReversed,
  repeaterUnused,
  repeaterWithoutTone,
  serviceAntennaTooHigh,
  serviceCertifiedForBoth,
  serviceNotCertified,
  serviceRepeaterNotAllowed,
  serviceRoleOnlyChannel,
  serviceStationNotAdmitted,
  serviceStoreAndForwardNotAllowed,
  serviceUnknownService,
  serviceWithoutFrequency,
  standardBetweenChannels,
  standardFrequencyOfPublishedChannelTyped,
  standardUnknownChannel,
  teamEmpty,
  teamMemberTwice,
  toneDcsAlias,
  toneDcsInverseInUse,
  toneMainsHarmonic,
  toneNeighbouringTones,
  toneNotStandard,
  toneRadioCannotSend,
  trialInTheFuture,
  trialNothingHeardOnRung,
  widthOverBandPlan,
  widthOverLawful,
  widthRadioCannotSet,
];
