// Generated from the files in this folder by `npm run generate`. Do not edit.
import { rule as rule1 } from './cleaning/abrasive-tool.ts';
import { rule as rule2 } from './cleaning/actuation-missing.ts';
import { rule as rule3 } from './cleaning/assembly-state-unstated.ts';
import { rule as rule4 } from './cleaning/brush-does-not-fit.ts';
import { rule as rule5 } from './cleaning/brush-undefined.ts';
import { rule as rule6 } from './cleaning/detergent-discontinued.ts';
import { rule as rule7 } from './cleaning/detergent-dose-missing.ts';
import { rule as rule8 } from './cleaning/detergent-ph-basis-unknown.ts';
import { rule as rule9 } from './cleaning/detergent-ph-outside.ts';
import { rule as rule10 } from './cleaning/detergent-temperature-window.ts';
import { rule as rule11 } from './cleaning/detergent-wrong-method.ts';
import { rule as rule12 } from './cleaning/disassembly-missing.ts';
import { rule as rule13 } from './cleaning/disassembly-part-left.ts';
import { rule as rule14 } from './cleaning/disease-specific-cleaning.ts';
import { rule as rule15 } from './cleaning/first-rinse-hot.ts';
import { rule as rule16 } from './cleaning/flush-amount-unsaid.ts';
import { rule as rule17 } from './cleaning/flush-port-forgotten.ts';
import { rule as rule18 } from './cleaning/flush-short.ts';
import { rule as rule19 } from './cleaning/flush-undefined.ts';
import { rule as rule20 } from './cleaning/immersion-forbidden.ts';
import { rule as rule21 } from './cleaning/manual-only-where-mechanical-required.ts';
import { rule as rule22 } from './cleaning/manual-preclean-dropped.ts';
import { rule as rule23 } from './cleaning/material-chemistry-conflict.ts';
import { rule as rule24 } from './cleaning/mechanical-where-manual-only.ts';
import { rule as rule25 } from './cleaning/only-manual-stated.ts';
import { rule as rule26 } from './cleaning/prion-branch-missing.ts';
import { rule as rule27 } from './cleaning/prion-policy-unsourced.ts';
import { rule as rule28 } from './cleaning/prion-routed-to-routine.ts';
import { rule as rule29 } from './cleaning/rinse-after-chemistry-missing.ts';
import { rule as rule30 } from './cleaning/soak-outside-limits.ts';
import { rule as rule31 } from './cleaning/solution-change-missing.ts';
import { rule as rule32 } from './cleaning/step-agent-unsaid.ts';
import { rule as rule33 } from './cleaning/step-water-low.ts';
import { rule as rule34 } from './cleaning/tse-note-encoded-as-routine.ts';
import { rule as rule35 } from './file/duplicate-id.ts';
import { rule as rule36 } from './file/reference-loop.ts';
import { rule as rule37 } from './file/unknown-id.ts';
import { rule as rule38 } from './governance/authority-unsourced.ts';
import { rule as rule39 } from './governance/deferred-to-department-undefined.ts';
import { rule as rule40 } from './governance/procedure-overrides-manufacturer.ts';
import { rule as rule41 } from './governance/procedure-stage-missing.ts';
import { rule as rule42 } from './governance/procedure-step-order.ts';
import { rule as rule43 } from './governance/stricter-not-safer.ts';
import { rule as rule44 } from './governance/threshold-unsourced.ts';
import { rule as rule45 } from './governance/validation-claimed-by-department.ts';
import { rule as rule46 } from './governance/waiver-invalid.ts';
import { rule as rule47 } from './immediate-use/iuss-cleaning-reduced.ts';
import { rule as rule48 } from './immediate-use/iuss-containment-not-cleared.ts';
import { rule as rule49 } from './immediate-use/iuss-derived-by-deleting-dry.ts';
import { rule as rule50 } from './immediate-use/iuss-for-convenience.ts';
import { rule as rule51 } from './immediate-use/iuss-implant.ts';
import { rule as rule52 } from './immediate-use/iuss-not-offered.ts';
import { rule as rule53 } from './immediate-use/iuss-record-missing.ts';
import { rule as rule54 } from './immediate-use/iuss-stored.ts';
import { rule as rule55 } from './inspection/inspection-criteria-missing.ts';
import { rule as rule56 } from './inspection/insulation-test-missing.ts';
import { rule as rule57 } from './inspection/lubricant-not-permitted.ts';
import { rule as rule58 } from './inspection/lubrication-missing.ts';
import { rule as rule59 } from './inspection/lumen-inspection-missing.ts';
import { rule as rule60 } from './inspection/magnification-short.ts';
import { rule as rule61 } from './inspection/seal-not-replaced.ts';
import { rule as rule62 } from './inspection/use-limit-uncounted.ts';
import { rule as rule63 } from './monitoring/air-removal-test-missing-or-long.ts';
import { rule as rule64 } from './monitoring/implant-release-early.ts';
import { rule as rule65 } from './monitoring/indicator-level-missing.ts';
import { rule as rule66 } from './monitoring/indicator-modality-mismatch.ts';
import { rule as rule67 } from './monitoring/indicator-place-unsourced.ts';
import { rule as rule68 } from './monitoring/indicator-place-wrong-for-packaging.ts';
import { rule as rule69 } from './monitoring/indicator-stated-value-mismatch.ts';
import { rule as rule70 } from './packaging/accessory-not-listed.ts';
import { rule as rule71 } from './packaging/cellulose-in-peroxide.ts';
import { rule as rule72 } from './packaging/configuration-not-instructed.ts';
import { rule as rule73 } from './packaging/container-dry-governs.ts';
import { rule as rule74 } from './packaging/container-lumen-limit.ts';
import { rule as rule75 } from './packaging/container-not-validated-for-cycle.ts';
import { rule as rule76 } from './packaging/container-parts-mismatch.ts';
import { rule as rule77 } from './packaging/double-pouch-unsupported.ts';
import { rule as rule78 } from './packaging/member-listed-twice.ts';
import { rule as rule79 } from './packaging/named-case-only.ts';
import { rule as rule80 } from './packaging/packaging-not-listed.ts';
import { rule as rule81 } from './packaging/pouch-inside-set.ts';
import { rule as rule82 } from './packaging/set-data-missing.ts';
import { rule as rule83 } from './packaging/set-mass-unmeasured.ts';
import { rule as rule84 } from './packaging/set-overweight.ts';
import { rule as rule85 } from './packaging/validated-with-read-as-only.ts';
import { rule as rule86 } from './packaging/wrap-grade-under-load.ts';
import { rule as rule87 } from './point-of-use/delay-limit-exceeded.ts';
import { rule as rule88 } from './point-of-use/keep-moist-missing.ts';
import { rule as rule89 } from './point-of-use/loaner-document-missing.ts';
import { rule as rule90 } from './point-of-use/loaner-lead-time-short.ts';
import { rule as rule91 } from './point-of-use/loaner-trusted-as-processed.ts';
import { rule as rule92 } from './point-of-use/lumen-not-flushed-at-use.ts';
import { rule as rule93 } from './point-of-use/new-device-not-cleaned.ts';
import { rule as rule94 } from './point-of-use/out-of-scope-device.ts';
import { rule as rule95 } from './point-of-use/point-of-use-forbidden-fluid.ts';
import { rule as rule96 } from './point-of-use/point-of-use-missing.ts';
import { rule as rule97 } from './point-of-use/set-line-unmapped.ts';
import { rule as rule98 } from './point-of-use/single-use-in-set.ts';
import { rule as rule99 } from './point-of-use/transport-not-contained.ts';
import { rule as rule100 } from './revision/device-no-document.ts';
import { rule as rule101 } from './revision/document-checksum-missing.ts';
import { rule as rule102 } from './revision/document-does-not-cover.ts';
import { rule as rule103 } from './revision/document-file-changed.ts';
import { rule as rule104 } from './revision/document-file-missing.ts';
import { rule as rule105 } from './revision/document-file-scan.ts';
import { rule as rule106 } from './revision/document-file-unreadable.ts';
import { rule as rule107 } from './revision/document-market-mismatch.ts';
import { rule as rule108 } from './revision/document-not-yet-effective.ts';
import { rule as rule109 } from './revision/documents-conflict-unresolved.ts';
import { rule as rule110 } from './revision/duplicate-family.ts';
import { rule as rule111 } from './revision/generic-beats-specific.ts';
import { rule as rule112 } from './revision/passage-of-other-revision.ts';
import { rule as rule113 } from './revision/response-not-usable.ts';
import { rule as rule114 } from './revision/review-overdue.ts';
import { rule as rule115 } from './revision/revision-superseded.ts';
import { rule as rule116 } from './revision/revision-without-impact-sign-off.ts';
import { rule as rule117 } from './revision/sign-off-expired.ts';
import { rule as rule118 } from './revision/sign-off-incomplete.ts';
import { rule as rule119 } from './revision/sign-off-reopened.ts';
import { rule as rule120 } from './revision/sign-off-unused.ts';
import { rule as rule121 } from './revision/source-locator-missing.ts';
import { rule as rule122 } from './revision/value-after-file-change.ts';
import { rule as rule123 } from './rinsing/air-pressure-over-limit.ts';
import { rule as rule124 } from './rinsing/drying-hotter-than-device.ts';
import { rule as rule125 } from './rinsing/drying-missing.ts';
import { rule as rule126 } from './rinsing/final-rinse-grade-low.ts';
import { rule as rule127 } from './rinsing/intraocular-controls-missing.ts';
import { rule as rule128 } from './rinsing/static-rinse-for-lumen.ts';
import { rule as rule129 } from './rinsing/water-result-stale.ts';
import { rule as rule130 } from './rinsing/wet-into-low-temperature.ts';
import { rule as rule131 } from './rinsing/wet-into-steam.ts';
import { rule as rule132 } from './route/card-cycle-not-derived.ts';
import { rule as rule133 } from './route/department-not-encoded.ts';
import { rule as rule134 } from './route/governing-changed.ts';
import { rule as rule135 } from './route/member-needs-own-route.ts';
import { rule as rule136 } from './route/route-needs-answer.ts';
import { rule as rule137 } from './route/route-single-point.ts';
import { rule as rule138 } from './route/set-cleaning-clash.ts';
import { rule as rule139 } from './route/set-route-none.ts';
import { rule as rule140 } from './route/strictest-picked-not-intersected.ts';
import { rule as rule141 } from './source/alternatives-mixed.ts';
import { rule as rule142 } from './source/ambiguous-without-question.ts';
import { rule as rule143 } from './source/approximate-used-as-limit.ts';
import { rule as rule144 } from './source/bare-number-promoted.ts';
import { rule as rule145 } from './source/citation-of-other-subject.ts';
import { rule as rule146 } from './source/decimal-or-footnote-suspect.ts';
import { rule as rule147 } from './source/delta-converted-as-absolute.ts';
import { rule as rule148 } from './source/encoded-from-secondary-source.ts';
import { rule as rule149 } from './source/encoder-is-approver.ts';
import { rule as rule150 } from './source/exposure-vs-total-time.ts';
import { rule as rule151 } from './source/half-cycle-encoded.ts';
import { rule as rule152 } from './source/min-token-ambiguous.ts';
import { rule as rule153 } from './source/passage-not-encoded.ts';
import { rule as rule154 } from './source/passage-without-words.ts';
import { rule as rule155 } from './source/pictogram-without-text.ts';
import { rule as rule156 } from './source/prohibition-in-part.ts';
import { rule as rule157 } from './source/prohibition-not-in-quote.ts';
import { rule as rule158 } from './source/quote-and-or-changed.ts';
import { rule as rule159 } from './source/quote-bound-changed.ts';
import { rule as rule160 } from './source/quote-modality-changed.ts';
import { rule as rule161 } from './source/quote-negation-lost.ts';
import { rule as rule162 } from './source/quote-not-on-page.ts';
import { rule as rule163 } from './source/quote-number-mismatch.ts';
import { rule as rule164 } from './source/quote-number-not-encoded.ts';
import { rule as rule165 } from './source/quote-packaging-changed.ts';
import { rule as rule166 } from './source/quote-relation-changed.ts';
import { rule as rule167 } from './source/quote-stage-left-out.ts';
import { rule as rule168 } from './source/quote-step-left-out.ts';
import { rule as rule169 } from './source/range-reversed.ts';
import { rule as rule170 } from './source/silent-field-filled.ts';
import { rule as rule171 } from './source/source-missing.ts';
import { rule as rule172 } from './source/stage-undeclared.ts';
import { rule as rule173 } from './source/step-detail-uneven.ts';
import { rule as rule174 } from './source/unit-missing-or-implausible.ts';
import { rule as rule175 } from './source/unit-pair-mismatch.ts';
import { rule as rule176 } from './sterilization/condensate-vs-dry.ts';
import { rule as rule177 } from './sterilization/cycle-dry-short.ts';
import { rule as rule178 } from './sterilization/cycle-exposure-longer-unstated.ts';
import { rule as rule179 } from './sterilization/cycle-exposure-short.ts';
import { rule as rule180 } from './sterilization/cycle-modality-mismatch.ts';
import { rule as rule181 } from './sterilization/cycle-name-differs.ts';
import { rule as rule182 } from './sterilization/cycle-temperature-differs.ts';
import { rule as rule183 } from './sterilization/cycle-unqualified.ts';
import { rule as rule184 } from './sterilization/dry-time-missing.ts';
import { rule as rule185 } from './sterilization/eo-aeration-short.ts';
import { rule as rule186 } from './sterilization/extended-cycle-for-all.ts';
import { rule as rule187 } from './sterilization/flush-pulse-assumed-equal.ts';
import { rule as rule188 } from './sterilization/lethality-implausible.ts';
import { rule as rule189 } from './sterilization/lethality-used-as-permission.ts';
import { rule as rule190 } from './sterilization/load-over-cycle-limit.ts';
import { rule as rule191 } from './sterilization/modality-prohibited.ts';
import { rule as rule192 } from './sterilization/option-incomplete.ts';
import { rule as rule193 } from './sterilization/peroxide-cycle-not-listed.ts';
import { rule as rule194 } from './sterilization/peroxide-lumen-outside.ts';
import { rule as rule195 } from './sterilization/pressure-as-requirement.ts';
import { rule as rule196 } from './sterilization/product-test-missing.ts';
import { rule as rule197 } from './sterilization/steam-quality-out.ts';
import { rule as rule198 } from './sterilization/temperature-pressure-inconsistent.ts';
import { rule as rule199 } from './storage/cool-aim-on-bare-metal.ts';
import { rule as rule200 } from './storage/cool-aim-wrong-for-packaging.ts';
import { rule as rule201 } from './storage/cool-criterion-missing.ts';
import { rule as rule202 } from './storage/cool-forced.ts';
import { rule as rule203 } from './storage/cool-release-below-room.ts';
import { rule as rule204 } from './storage/cool-short-of-policy.ts';
import { rule as rule205 } from './storage/cool-touch-or-cold-surface.ts';
import { rule as rule206 } from './storage/storage-limit-conflict.ts';
import { rule as rule207 } from './storage/wet-pack-released.ts';
import { rule as rule208 } from './teaching/answer-key-drift.ts';
import { rule as rule209 } from './teaching/card-stale.ts';
import { rule as rule210 } from './teaching/caution-missing-on-output.ts';
import { rule as rule211 } from './teaching/change-without-training.ts';
import { rule as rule212 } from './teaching/competency-overdue.ts';
import { rule as rule213 } from './teaching/poster-overgeneralises.ts';
import { rule as rule214 } from './teaching/question-many-true.ts';
import { rule as rule215 } from './teaching/step-without-why.ts';
import { rule as rule216 } from './washing/a0-claim-wrong.ts';
import { rule as rule217 } from './washing/a0-inadequate.ts';
import { rule as rule218 } from './washing/disinfected-called-sterile.ts';
import { rule as rule219 } from './washing/thermal-above-local-boiling.ts';
import { rule as rule220 } from './washing/ultrasonic-degas-missing.ts';
import { rule as rule221 } from './washing/ultrasonic-forbidden.ts';
import { rule as rule222 } from './washing/ultrasonic-lumen-not-irrigated.ts';
import { rule as rule223 } from './washing/ultrasonic-mixed-metals.ts';
import { rule as rule224 } from './washing/ultrasonic-parameters-outside.ts';
import { rule as rule225 } from './washing/ultrasonic-test-stale.ts';
import { rule as rule226 } from './washing/wash-without-detergent.ts';
import { rule as rule227 } from './washing/washer-connector-missing.ts';
import { rule as rule228 } from './washing/washer-cycle-differs.ts';
import { rule as rule229 } from './washing/washer-dosed-extra.ts';
import { rule as rule230 } from './washing/washer-hotter-than-device.ts';
import { rule as rule231 } from './washing/washer-phase-missing.ts';
import { rule as rule232 } from './washing/washer-phase-short-or-cool.ts';
import { rule as rule233 } from './washing/washer-prewash-hot.ts';
import { rule as rule234 } from './washing/washer-route-none.ts';
import { rule as rule235 } from './washing/washer-verification-stale.ts';
import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [
  rule1,
  rule2,
  rule3,
  rule4,
  rule5,
  rule6,
  rule7,
  rule8,
  rule9,
  rule10,
  rule11,
  rule12,
  rule13,
  rule14,
  rule15,
  rule16,
  rule17,
  rule18,
  rule19,
  rule20,
  rule21,
  rule22,
  rule23,
  rule24,
  rule25,
  rule26,
  rule27,
  rule28,
  rule29,
  rule30,
  rule31,
  rule32,
  rule33,
  rule34,
  rule35,
  rule36,
  rule37,
  rule38,
  rule39,
  rule40,
  rule41,
  rule42,
  rule43,
  rule44,
  rule45,
  rule46,
  rule47,
  rule48,
  rule49,
  rule50,
  rule51,
  rule52,
  rule53,
  rule54,
  rule55,
  rule56,
  rule57,
  rule58,
  rule59,
  rule60,
  rule61,
  rule62,
  rule63,
  rule64,
  rule65,
  rule66,
  rule67,
  rule68,
  rule69,
  rule70,
  rule71,
  rule72,
  rule73,
  rule74,
  rule75,
  rule76,
  rule77,
  rule78,
  rule79,
  rule80,
  rule81,
  rule82,
  rule83,
  rule84,
  rule85,
  rule86,
  rule87,
  rule88,
  rule89,
  rule90,
  rule91,
  rule92,
  rule93,
  rule94,
  rule95,
  rule96,
  rule97,
  rule98,
  rule99,
  rule100,
  rule101,
  rule102,
  rule103,
  rule104,
  rule105,
  rule106,
  rule107,
  rule108,
  rule109,
  rule110,
  rule111,
  rule112,
  rule113,
  rule114,
  rule115,
  rule116,
  rule117,
  rule118,
  rule119,
  rule120,
  rule121,
  rule122,
  rule123,
  rule124,
  rule125,
  rule126,
  rule127,
  rule128,
  rule129,
  rule130,
  rule131,
  rule132,
  rule133,
  rule134,
  rule135,
  rule136,
  rule137,
  rule138,
  rule139,
  rule140,
  rule141,
  rule142,
  rule143,
  rule144,
  rule145,
  rule146,
  rule147,
  rule148,
  rule149,
  rule150,
  rule151,
  rule152,
  rule153,
  rule154,
  rule155,
  rule156,
  rule157,
  rule158,
  rule159,
  rule160,
  rule161,
  rule162,
  rule163,
  rule164,
  rule165,
  rule166,
  rule167,
  rule168,
  rule169,
  rule170,
  rule171,
  rule172,
  rule173,
  rule174,
  rule175,
  rule176,
  rule177,
  rule178,
  rule179,
  rule180,
  rule181,
  rule182,
  rule183,
  rule184,
  rule185,
  rule186,
  rule187,
  rule188,
  rule189,
  rule190,
  rule191,
  rule192,
  rule193,
  rule194,
  rule195,
  rule196,
  rule197,
  rule198,
  rule199,
  rule200,
  rule201,
  rule202,
  rule203,
  rule204,
  rule205,
  rule206,
  rule207,
  rule208,
  rule209,
  rule210,
  rule211,
  rule212,
  rule213,
  rule214,
  rule215,
  rule216,
  rule217,
  rule218,
  rule219,
  rule220,
  rule221,
  rule222,
  rule223,
  rule224,
  rule225,
  rule226,
  rule227,
  rule228,
  rule229,
  rule230,
  rule231,
  rule232,
  rule233,
  rule234,
  rule235,
];
