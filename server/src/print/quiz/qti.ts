import { escapedForHtml } from '../../base/printable.ts';
import { plain } from '../piece.ts';
import type { Quiz } from './build.ts';
import { askFirst, type Question } from './question.ts';

/*
 * Questions in the open format QTI 3 of 1EdTech: one item a file, a test that lists them, and the manifest of the package. Element names
 * from the public specification, version 3.0.
 */

const item = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
const manifest = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';

/** Files of the package by name. */
export function quizQti(quiz: Quiz): ReadonlyMap<string, string> {
  const names = quiz.questions.map((_, index) => `question-${index + 1}`);
  const files = new Map<string, string>();
  for (const [index, question] of quiz.questions.entries()) {
    const name = names[index] ?? '';
    files.set(`${name}.xml`, itemXml(question, name));
  }
  files.set('test.xml', testXml(quiz, names));
  files.set('imsmanifest.xml', manifestXml(quiz, names));
  return files;
}

function itemXml({ text, choices, why, citation }: Question, name: string): string {
  const right = choices.findIndex(({ right: is }) => is);
  const options = choices.map(
    ({ line }, index) =>
      `      <qti-simple-choice identifier="choice-${index + 1}"${line === askFirst ? ' fixed="true"' : ''}>${xml(plain(line))}</qti-simple-choice>`,
  );
  const reason = [plain(why), plain(citation)].filter((part) => part !== '').join(' ');
  return `<?xml version="1.0" encoding="UTF-8"?>
<qti-assessment-item xmlns="${item}" identifier="${name}" title="${xml(plain(text).slice(0, 120))}" adaptive="false" time-dependent="false" xml:lang="en">
  <qti-response-declaration identifier="RESPONSE" cardinality="single" base-type="identifier">
    <qti-correct-response>
      <qti-value>choice-${right + 1}</qti-value>
    </qti-correct-response>
  </qti-response-declaration>
  <qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float"/>
  <qti-outcome-declaration identifier="FEEDBACK" cardinality="single" base-type="identifier"/>
  <qti-item-body>
    <qti-choice-interaction response-identifier="RESPONSE" shuffle="true" max-choices="1">
      <qti-prompt>${xml(plain(text))}</qti-prompt>
${options.join('\n')}
    </qti-choice-interaction>
  </qti-item-body>
${processing}
  <qti-modal-feedback outcome-identifier="FEEDBACK" identifier="why" show-hide="show">
    <qti-content-body><p>${xml(reason)}</p></qti-content-body>
  </qti-modal-feedback>
</qti-assessment-item>
`;
}

/** Whoever answered sees why, right or wrong. Written out, so that nobody has to fetch a template. */
const processing = `  <qti-response-processing>
    <qti-response-condition>
      <qti-response-if>
        <qti-match>
          <qti-variable identifier="RESPONSE"/>
          <qti-correct identifier="RESPONSE"/>
        </qti-match>
        <qti-set-outcome-value identifier="SCORE">
          <qti-base-value base-type="float">1</qti-base-value>
        </qti-set-outcome-value>
      </qti-response-if>
      <qti-response-else>
        <qti-set-outcome-value identifier="SCORE">
          <qti-base-value base-type="float">0</qti-base-value>
        </qti-set-outcome-value>
      </qti-response-else>
    </qti-response-condition>
    <qti-set-outcome-value identifier="FEEDBACK">
      <qti-base-value base-type="identifier">why</qti-base-value>
    </qti-set-outcome-value>
  </qti-response-processing>`;

function testXml({ stamp }: Quiz, names: readonly string[]): string {
  const refs = names.map((name) => `      <qti-assessment-item-ref identifier="${name}" href="${name}.xml"/>`);
  return `<?xml version="1.0" encoding="UTF-8"?>
<qti-assessment-test xmlns="${item}" identifier="sheet-${stamp}" title="Questions, stamp ${stamp}">
  <qti-test-part identifier="part" navigation-mode="nonlinear" submission-mode="individual">
    <qti-assessment-section identifier="section" title="Questions" visible="true">
${refs.join('\n')}
    </qti-assessment-section>
  </qti-test-part>
</qti-assessment-test>
`;
}

function manifestXml({ stamp }: Quiz, names: readonly string[]): string {
  const items = names.map(
    (name) =>
      `    <resource identifier="${name}" type="imsqti_item_xmlv3p0" href="${name}.xml"><file href="${name}.xml"/></resource>`,
  );
  const depends = names.map((name) => `<dependency identifierref="${name}"/>`).join('');
  return `<?xml version="1.0" encoding="UTF-8"?>
<manifest xmlns="${manifest}" identifier="package-${stamp}">
  <metadata><schema>QTI Package</schema><schemaversion>3.0.0</schemaversion></metadata>
  <organizations/>
  <resources>
    <resource identifier="test" type="imsqti_test_xmlv3p0" href="test.xml"><file href="test.xml"/>${depends}</resource>
${items.join('\n')}
  </resources>
</manifest>
`;
}

/** XML knows the same five escapes; control characters, which it can't hold at all, are already spelled out. */
function xml(text: string): string {
  return escapedForHtml(text);
}
