// Colours a crochet pattern wherever no server runs; this file is
// written from vscode/syntaxes/crochet.tmLanguage.json by go test ./editors -update.
module.exports = grammar({
  name: 'crochet',
  extras: () => [],
  rules: {
    pattern: ($) => seq(repeat(seq(optional($._line), /\r?\n/)), optional($._line)),
    _line: ($) => choice(
      seq(choice($.heading, $.label, $.field), repeat($._part)),
      seq($._space, optional(seq($.label, repeat($._part)))),
      seq($._space, $._word_or_sign, repeat($._part)),
      seq($._word_or_sign, repeat($._part)),
    ),
    _part: ($) => choice($._word_or_sign, $._space),
    _word_or_sign: ($) => choice($.comment, $.count, seq($.stitch, optional($._no_more)), $.action, $.bracket, $.number, $._other),
    _space: () => /[ \t]+/,
    // remarks of the writer's own
    comment: () => token(/\/\/.*/i),
    // a piece, where it begins
    heading: () => token(/piece[ \t]*:.*/i),
    // the label of a row
    label: () => token(/(?:(?:next|set-up|setup|last|foundation|joining)[ \t](?:rows?|rnds?|rounds?)|(?:rows?|rnds?|rounds?|rds?|r)\.?[ \t]?\d[^\n:.()]*)(?:\([^\n()]*\))?[ \t]*:/i),
    // the name of a field of the header
    field: () => token(/[a-z][a-z ]*(?:[ \t][a-z0-9])?:/i),
    // a stated count, in one size or in several
    count: () => token(/\(\d+(?:[ \t]\(\d[\d, ]*\))?[ \t](?:sts?|stitch(?:es)?|sps?|chs?|sc|h?dc|d?tr|htr)(?:[^\n()\p{L}\p{Nd}_][^\n()]*)?\)/i),
    // a stitch: what goes before its name, its name, what goes behind it
    stitch: () => seq(token(/(?:(?:(?:front|back)[ \t]post|raised[ \t](?:front|back)|raised|extended|ext|foundation|reverse|rev|cross(?:ed)?|linked|tunisian|simple|full|short|long|plain|spike|invisible|inv|half|bp|fp|t|x)[ \t-])*(?:(?:fp|bp|ex?|f|r|t)?(?:sc|s?dc|hdc|htr|trtr|dtr|trc|tr|qtr|quadtr|quintr|ttr|htc|tc|ss|ks|ps|fs|es|rs|ess)s?(?:fp|bp|f|b)?(?:\dtogs?|togs?)?|[hs][ \t]d[ \t]c|s[ \t]s|[dh][ \t]tr[ \t]c|[dh][ \t]trc?|[dsht]\.?[ \t][ct]\.?|etss|t?sl[ \t]?(?:sts?|stitch(?:es)?)|sl|double[ \t]longs?(?:[ \t]trebles?)?|(?:crossed|cross|reverse|long|extended|simple|full|short|plain|knit|spike|crab|(?:double[ \t])?(?:loop|lp)|fur)[ \t](?:sts?|stitch(?:es)?)|(?:\d|two|three|four|five|six|seven|eight|nine)[ \t]?(?:together|togs?)|ch(?:ain)?[ \t]\d[ \t]picots?|picots?[ \t]of[ \t](?:\d[ \t]ch|ch[ \t]\d)|half[ \t][dt]\.?[ \t][cr]\.?|tr[ \t]c|t[ \t]tr|quad|quint|dbl|trip|quadruple|quintuple|singles?|doubles?|triples?|trebles?|crochets?|slip[ \t]?stitch(?:es|ed)?|slip[ \t]sts?|ss|chs?|chains?|spikes?|inc(?:'d|s|rease[sd]?)?|(?:inv)?dec(?:'d|s|rease[sd]?)?|clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|ps|shells?|sh|fans?|picots?|purls?|v-?sts?|v[ \t]st(?:itch)?(?:s|es)?|crab|knit|fwd?p|retp|(?:forward|return)[ \t]pass(?:es)?)/i), repeat(token(/[ \t-]?(?:(?:two|three|four|five|six|seven|eight|nine|\d)[ \t]?(?:tog(?:ether|s)?)|together|togs?|trc?|dc|sc|d|c|crochets?|trebles?|doubles?|triples?|singles?|(?:front|back)[ \t]posts?|posts?|front|back|fp|bp|v[ \t]sts?|v[ \t]stitch(?:es)?|v-?sts?|inv(?:isible)?[ \t]dec(?:rease)?s?|clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|picots?|shells?|fans?|spikes?|dec(?:rease)?s?|inc(?:rease)?s?|sts?|stitch(?:es)?)/i))),
    _no_more: () => token(seq(/[ \t-](?:(?:two|three|four|five|six|seven|eight|nine|\d)[ \t]?(?:tog(?:ether|s)?)|together|togs?|trc?|dc|sc|d|c|crochets?|trebles?|doubles?|triples?|singles?|(?:front|back)[ \t]posts?|posts?|front|back|fp|bp|v[ \t]sts?|v[ \t]stitch(?:es)?|v-?sts?|inv(?:isible)?[ \t]dec(?:rease)?s?|clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|picots?|shells?|fans?|spikes?|dec(?:rease)?s?|inc(?:rease)?s?|sts?|stitch(?:es)?)/i, /[\p{L}\p{Nd}_]+/)),
    // what is done other than stitches
    action: () => token(/(?:rep(?:eat)?s?|rpt|skip(?:ped)?|sk|miss(?:ed)?|turn(?:ed)?|join(?:ed)?|fasten(?:ed)?(?:[ \t]off)?|fo|weave(?:[ \t]in)?|change|switch|place|move|pm|leave|leaving|continue|work(?:ed)?|return|make|cut|break|sew|stuff|times|once|twice|more|not)/i),
    // the stars and brackets of repeats and groups
    bracket: () => token(/[*\[\]()]/i),
    // numbers
    number: () => token(/\d+(?:\.\d+)?/i),
    _other: () => choice(
      token(seq(/(?:(?:(?:front|back)[ \t]post|raised[ \t](?:front|back)|raised|extended|ext|foundation|reverse|rev|cross(?:ed)?|linked|tunisian|simple|full|short|long|plain|spike|invisible|inv|half|bp|fp|t|x)[ \t-])*(?:(?:fp|bp|ex?|f|r|t)?(?:sc|s?dc|hdc|htr|trtr|dtr|trc|tr|qtr|quadtr|quintr|ttr|htc|tc|ss|ks|ps|fs|es|rs|ess)s?(?:fp|bp|f|b)?(?:\dtogs?|togs?)?|[hs][ \t]d[ \t]c|s[ \t]s|[dh][ \t]tr[ \t]c|[dh][ \t]trc?|[dsht]\.?[ \t][ct]\.?|etss|t?sl[ \t]?(?:sts?|stitch(?:es)?)|sl|double[ \t]longs?(?:[ \t]trebles?)?|(?:crossed|cross|reverse|long|extended|simple|full|short|plain|knit|spike|crab|(?:double[ \t])?(?:loop|lp)|fur)[ \t](?:sts?|stitch(?:es)?)|(?:\d|two|three|four|five|six|seven|eight|nine)[ \t]?(?:together|togs?)|ch(?:ain)?[ \t]\d[ \t]picots?|picots?[ \t]of[ \t](?:\d[ \t]ch|ch[ \t]\d)|half[ \t][dt]\.?[ \t][cr]\.?|tr[ \t]c|t[ \t]tr|quad|quint|dbl|trip|quadruple|quintuple|singles?|doubles?|triples?|trebles?|crochets?|slip[ \t]?stitch(?:es|ed)?|slip[ \t]sts?|ss|chs?|chains?|spikes?|inc(?:'d|s|rease[sd]?)?|(?:inv)?dec(?:'d|s|rease[sd]?)?|clusters?|cls?|bobbles?|bo|puffs?|popcorns?|pcs?|ps|shells?|sh|fans?|picots?|purls?|v-?sts?|v[ \t]st(?:itch)?(?:s|es)?|crab|knit|fwd?p|retp|(?:forward|return)[ \t]pass(?:es)?)/i, /[\p{L}\p{Nd}_]+/)),
      token(seq(/(?:rep(?:eat)?s?|rpt|skip(?:ped)?|sk|miss(?:ed)?|turn(?:ed)?|join(?:ed)?|fasten(?:ed)?(?:[ \t]off)?|fo|weave(?:[ \t]in)?|change|switch|place|move|pm|leave|leaving|continue|work(?:ed)?|return|make|cut|break|sew|stuff|times|once|twice|more|not)/i, /[\p{L}\p{Nd}_]+/)),
      token(seq(/\d+(?:\.\d+)?/i, /[\p{L}\p{Nd}_]+/)),
      /[\p{L}\p{Nd}_]+(\/\/[^\s]*)?/,
      /[^\s\p{L}\p{Nd}_*\[\]()]+/,
    ),
  },
});
