/** Characters no page can show: C0 and C1 controls, and the marks that turn the direction of text around. */
const unseen = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufeff]/g;

/** Text as it goes between tags or into a quoted attribute of the markup. Control characters are dropped. */
export function escapeMarkup(text: string): string {
  return text
    .replace(unseen, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#x27;');
}

/** The same text without what no page can show. */
export function withoutControls(text: string): string {
  return text.replace(unseen, '');
}
