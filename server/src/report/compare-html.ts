import { escapedForHtml as html } from '../base/printable.ts';
import type { ReviewedChange, RevisionReview } from '../revision/review.ts';
import { impactWords, togetherWords } from './compare-page.ts';
import {
  actionWords,
  type CompareHead,
  citation,
  classWords,
  compareCautions,
  countWords,
  decisionOf,
  decisionWords,
  effectOf,
  placeWords,
} from './compare-words.ts';

const style = `
@page { size: A4 landscape; margin: 12mm; }
body { font: 10.5pt/1.4 system-ui, sans-serif; color: #111; max-width: 120em; margin: 1em auto; padding: 0 1em; }
h1 { font-size: 1.4em; } h2 { font-size: 1.15em; margin-top: 1.4em; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #777; padding: .4em .5em; vertical-align: top; text-align: left; }
thead { display: table-header-group; } tr { break-inside: avoid; }
td:nth-child(1), td:nth-child(3) { width: 30%; }
.effect { font-weight: 700; } .lost { border: 2px solid #111; padding: .2em 1em; }
blockquote { margin: .3em 0; } .small { font-size: .85em; color: #333; }
.sign td { height: 2.4em; width: 25%; }
`;

/** One page to print and sign: old words, class and effect, new words. Self-contained, without scripts. */
export function compareHtml(review: RevisionReview, head: CompareHead): string {
  const title = `${head.old} compared with ${head.now}`;
  const parts = [
    `<h1>${html(title)}</h1>`,
    ...review.revisions.map(revisionHtml),
    `<p><strong>${html(countWords(review))}.</strong> ${html(head.department)}</p>`,
    lostHtml(review),
    togetherHtml(review),
    tableHtml(review),
    noticesHtml(review, head),
    signatureHtml(),
    ...compareCautions.map((text) => `<p class="small">${html(text)}</p>`),
  ];
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${html(title)}</title>
<style>${style}</style>
</head>
<body>
${parts.filter((part) => part !== '').join('\n')}
</body>
</html>
`;
}

function revisionHtml({
  doc,
  from,
  to,
  title,
  issued,
  effective,
  reason,
}: RevisionReview['revisions'][number]): string {
  const dates = [issued && `issued ${issued}`, effective && `effective ${effective}`]
    .filter((part) => part !== '')
    .join(', ');
  return `<p>${html(`${doc} ${title}: revision ${from} to ${to}. ${dates}. ${reason || 'The maker gives no reason.'}`)}</p>`;
}

function lostHtml({ lost }: RevisionReview): string {
  if (lost.length === 0) return '';
  const items = lost.map(
    ({ saying, entity }) =>
      `<li>“${html(saying.quote)}” <span class="small">${html(`${citation(saying)}; ${entity}`)}</span></li>`,
  );
  return `<div class="lost"><h2>Passages that are gone from the new side</h2><ul>${items.join('')}</ul></div>`;
}

function togetherHtml(review: RevisionReview): string {
  const items = togetherWords(review).map((words) => `<li>${html(words)}</li>`);
  return items.length === 0 ? '' : `<h2>All changes together</h2><ul>${items.join('')}</ul>`;
}

function tableHtml(review: RevisionReview): string {
  if (review.changes.length === 0) return '';
  const rows = review.changes.map((change) => rowHtml(review, change));
  return `<h2>Changes, worst first</h2>
<table>
<thead><tr><th>Old</th><th>Class and effect here</th><th>New</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table>`;
}

function rowHtml(review: RevisionReview, change: ReviewedChange): string {
  const { here, because, impact } = change;
  const middle = [
    `<strong>${html(classWords[change.class])}</strong> <span class="small">${html(placeWords(change))}</span>`,
    `<span class="effect">${html(effectOf(change))}</span>${here === undefined ? '' : `. ${html(here.words)}`}`,
    ...(because === undefined ? [] : [html(because)]),
    ...(impact === undefined ? [] : impactWords(impact).map((words) => `<span class="small">${html(words)}</span>`)),
    `${html(actionWords[change.action])}. ${html(decisionWords[decisionOf(review, change)])}.`,
    '☐ agree ☐ disagree ☐ ask the maker',
    `<span class="small">${html(change.fingerprint)}</span>`,
  ];
  return `<tr><td>${sideHtml(change.before)}</td><td>${middle.join('<br>')}</td><td>${sideHtml(change.after)}</td></tr>`;
}

function sideHtml(side: ReviewedChange['before']): string {
  if (side === undefined) return '<em>nothing</em>';
  const quotes = side.says
    .filter(({ quote }) => quote !== '')
    .map((one) => `<blockquote>“${html(one.quote)}” <span class="small">${html(citation(one))}</span></blockquote>`);
  return `<strong>${html(side.words)}</strong>${quotes.join('')}`;
}

function noticesHtml({ recordKeeping, signOffs }: RevisionReview, { notices }: CompareHead): string {
  const items = [
    ...notices,
    ...signOffs.unused.map(
      ({ record, fingerprint }) => `${record} decides on ${fingerprint}, which this comparison does not have.`,
    ),
    ...signOffs.lacking.map((words) => `Sign-off ${words}.`),
    ...(recordKeeping > 0 ? [`In ${recordKeeping} places only the record of reading differs.`] : []),
  ];
  return items.length === 0 ? '' : `<ul class="small">${items.map((item) => `<li>${html(item)}</li>`).join('')}</ul>`;
}

function signatureHtml(): string {
  return `<h2>Signatures</h2>
<table class="sign"><tbody><tr><td>Reviewer (role)</td><td>Second reader (role)</td><td>Manager (role)</td><td>Day</td></tr></tbody></table>`;
}
