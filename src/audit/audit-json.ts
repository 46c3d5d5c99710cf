/** An audit as JSON. The shape is documented in the help of the command and kept stable. */
import type { Audit } from './compare-entries.ts';

export interface AuditHead {
  readonly plan: string;
  readonly radio: string;
  readonly revision: number;
  readonly check: string;
}

export function auditJson(audit: Audit, head: AuditHead): object {
  const count = (noticed: string) =>
    audit.differences.filter(({ effect }) => effect.noticed === noticed).length;
  return {
    ...head,
    clean: audit.clean,
    slots: audit.slots,
    slotsRead: audit.slotsRead,
    differences: audit.differences.map(
      ({ slot, name, field, shown, planned, message, press, cause, effect }) => ({
        slot,
        name,
        field,
        shown,
        planned,
        message,
        press,
        cause: cause?.code ?? null,
        likely: cause?.text ?? null,
        noticed: effect.noticed,
        effect: effect.text,
      }),
    ),
    unclear: audit.unclear.map(({ slot, field, line, message }) => ({
      slot: slot ?? null,
      field: field ?? null,
      line,
      message,
    })),
    unread: audit.unread,
    counts: { heard: count('heard'), unheard: count('unheard'), harmless: count('harmless') },
  };
}
