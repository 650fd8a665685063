/** How strongly pages ask for something, in English, German and French. */

export const preferred =
  /(?<!\p{L})(?:recommend\p{L}*|preferr?\p{L}*|advis\p{L}*|ideally|empfohlen|empfiehlt|empfehlen|empfehlenswert|vorzugsweise|bevorzugt|nach möglichkeit|(?:est|sont) (?:recommandé|conseillé|préférable)\p{L}*|de préférence)(?!\p{L})/iu;

export const permitted =
  /^suitable\s?:|(?<!\p{L})(?:(?:may|can|could)\s(?:also\s|additionally\s)?be|(?:is|are)\s(?:also\s)?(?:permitted|permissible|allowed|acceptable|possible|suitable|optional)|optionally|(?:kann|können|darf|dürfen)(?!\p{L})[^.;]{2,80}\swerden|(?:ist|sind)\s(?:\p{L}+\s)?(?:zulässig|erlaubt|möglich|geeignet|gestattet)|(?:peut|peuvent)\s(?:\p{L}+\s)?être|(?:est|sont)\s(?:autorisé|permis|possible|admis)\p{L}*)(?!\p{L})/iu;

/** What a sentence asks for under a condition holds only then: the clause up to its comma, or at its end. */
export const onlyUnder =
  /^(?:(?:for\s)?(?:heavily|visibly|very|badly|strongly)\s(?:soiled|contaminated|dirty)(?!\p{L})|(?:stark|sichtbar) verschmutzte|.{0,20}(?:très|fortement) souillé)|^(?:if|where|whenever|should|in case|provided|wenn|falls|sofern|bei (?:starker|sichtbarer)|si|s.il|en cas)(?!\p{L})[^,;]{3,120}[,;:]\s|\sonly\s(?:be\s)?(?:permitted|allowed|suitable|possible|for|if|when|in|on|with)(?!\p{L})|\s(?:if|where|unless|provided|falls|sofern|si)\s(?!(?:necessary|needed|required|appropriate|possible|nötig|erforderlich|nécessaire)(?!\p{L}))/iu;
