/** Pieces that documents are made of: usual ones, and odd ones near the edge of what the quick reader takes. */

export const plains = `4 min¦132 C¦stated¦steam-prevac¦rinse under water¦-5 C¦007¦12:30¦yes¦~¦2025-02-24`.split('¦');
export const oddPlains =
  `a: b¦a:¦a:b¦:a¦a #b¦a # b¦a#b¦a  #1¦#a¦- a¦-a¦-¦--¦---¦...¦? a¦?a¦*a¦&a b¦&a¦!t x¦|¦>¦|-¦>-¦|+¦>2¦|x¦%a¦@a¦\`a¦,a¦a,b¦a, b¦a [b]¦[¦]¦{¦}¦[a¦{a¦a]¦a}¦<<¦=¦"a¦'a¦a"b"¦it's¦\\¦C:\\x¦http://x¦5 °C¦µm¦é¦e\u0301¦\u2013 5¦\u2212 5¦≥ 5¦a\u00a0b¦\u00a0¦\u200b¦\ufeff¦\uff1a¦a\uff1a b¦\u202e¦\ud83d\ude00¦\ud800¦\u0085¦\u2028¦\t¦a\tb¦\0¦null¦¦ ¦x`.split(
    '¦',
  );
export const quoteds = `"a"¦'a'¦""¦''¦"Do not exceed 140 °C."¦"a: b # c"¦'it''s'¦"say \\"a\\""¦'"'¦"'"`.split('¦');
export const oddQuoteds =
  `"a¦'a¦a"¦"a" b¦"a"b¦"a"#c¦"a" #c¦"a"  # c¦"a\\¦"\\n"¦"\\x41"¦"C:\\"x"¦"C:\\dir"¦"\\q"¦'a'b'¦'''¦''''¦"a\n  b"¦'a\n b'¦"a":¦"a": b¦"a\\\n b"¦" a "¦"\u00a0"¦"\u200b"¦"a\tb"¦"\\\\"¦"\\\\\\""`.split(
    '¦',
  );
export const keys = `kind¦id¦a¦b¦at_least¦src¦s1¦max-delay¦C¦Due¦x9¦45-100¦"q"¦'q'`.split('¦');
export const oddKeys =
  `a b¦a.b¦°¦k°¦¦<<¦? a¦- a¦-a¦"¦"a" ¦a ¦[a]¦{a}¦&a k¦!t k¦*a¦"é"¦"a\\"b"¦__proto__¦\u0430¦%k¦k#`.split('¦');
export const colons = `:¦ :¦:\t¦::¦\uff1a¦¦: :¦:  `.split('¦');
export const comments = ` # note¦  # x¦ #¦ ## y¦ #x¦ #1¦#x¦  #x¦ # a: b¦\t# c`.split('¦');
export const lineEnds = `\r\n¦\r¦\n\n¦\n \n¦\n\t\n¦\n# note\n¦\n      # far\n¦\n---\n¦\n...\n¦\n%A\n¦\u2028`.split('¦');
export const pieces =
  `\n¦\n  ¦  ¦ ¦: ¦:¦- ¦-¦"¦'¦#¦ # ¦[¦]¦{¦}¦, ¦,¦\t¦|¦>¦|\n¦*a¦&a ¦!x ¦? ¦x¦\\¦\\"¦%¦\r\n¦\r¦°¦\u00a0¦a: b¦''`.split(
    '¦',
  );
