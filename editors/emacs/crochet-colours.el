;;; crochet-colours.el --- Colours of a crochet pattern  -*- lexical-binding: t -*-

;; This file is written from vscode/syntaxes/crochet.tmLanguage.json by go test ./editors -update.

;;; Code:

(defconst crochet-colours
  '(;; remarks of the writer's own
    ("\\(?:^\\|[ \t]\\)//.*$" . 'font-lock-comment-face)
    ;; a piece, where it begins
    ("^piece[ \t]*:.*$" . 'font-lock-type-face)
    ;; the label of a row
    ("^[ \t]*\\(?:\\(?:next\\|set-up\\|setup\\|last\\|foundation\\|joining\\)[ \t]\\(?:rows?\\|rnds?\\|rounds?\\)\\|\\(?:rows?\\|rnds?\\|rounds?\\|rds?\\|r\\)\\.?[ \t]?[0-9][^:.()]*\\)\\(?:([^()]*)\\)?[ \t]*:" . 'font-lock-function-name-face)
    ;; the name of a field of the header
    ("^[a-z][a-z ]*\\(?:[ \t][a-z0-9]\\)?:" . 'font-lock-variable-name-face)
    ;; a stated count, in one size or in several
    ("([0-9]+\\(?:[ \t]([0-9][0-9, ]*)\\)?[ \t]\\(?:sts?\\|stitch\\(?:es\\)?\\|sps?\\|chs?\\|sc\\|h?dc\\|d?tr\\|htr\\)\\b[^()]*)" . 'font-lock-constant-face)
    ;; a stitch: what goes before its name, its name, what goes behind it
    ("\\b\\(?:\\(?:\\(?:front\\|back\\)[ \t]post\\|raised[ \t]\\(?:front\\|back\\)\\|raised\\|extended\\|ext\\|foundation\\|reverse\\|rev\\|cross\\(?:ed\\)?\\|linked\\|tunisian\\|simple\\|full\\|short\\|long\\|plain\\|spike\\|invisible\\|inv\\|half\\|bp\\|fp\\|t\\|x\\)[s-]\\)*\\(?:\\(?:fp\\|bp\\|ex?\\|f\\|r\\|t\\)?\\(?:sc\\|s?dc\\|hdc\\|htr\\|trtr\\|dtr\\|trc\\|tr\\|qtr\\|quadtr\\|quintr\\|ttr\\|htc\\|tc\\|ss\\|ks\\|ps\\|fs\\|es\\|rs\\|ess\\)s?\\(?:fp\\|bp\\|f\\|b\\)?\\(?:[0-9]togs?\\|togs?\\)?\\|[hs][ \t]d[ \t]c\\|s[ \t]s\\|[dh][ \t]tr[ \t]c\\|[dh][ \t]trc?\\|[dsht]\\.?[ \t][ct]\\.?\\|etss\\|t?sl[ \t]?\\(?:sts?\\|stitch\\(?:es\\)?\\)\\|sl\\|double[ \t]longs?\\(?:[ \t]trebles?\\)?\\|\\(?:crossed\\|cross\\|reverse\\|long\\|extended\\|simple\\|full\\|short\\|plain\\|knit\\|spike\\|crab\\|\\(?:double[ \t]\\)?\\(?:loop\\|lp\\)\\|fur\\)[ \t]\\(?:sts?\\|stitch\\(?:es\\)?\\)\\|\\(?:[0-9]\\|two\\|three\\|four\\|five\\|six\\|seven\\|eight\\|nine\\)[ \t]?\\(?:together\\|togs?\\)\\|ch\\(?:ain\\)?[ \t][0-9][ \t]picots?\\|picots?[ \t]of[ \t]\\(?:[0-9][ \t]ch\\|ch[ \t][0-9]\\)\\|half[ \t][dt]\\.?[ \t][cr]\\.?\\|tr[ \t]c\\|t[ \t]tr\\|quad\\|quint\\|dbl\\|trip\\|quadruple\\|quintuple\\|singles?\\|doubles?\\|triples?\\|trebles?\\|crochets?\\|slip[ \t]?stitch\\(?:es\\|ed\\)?\\|slip[ \t]sts?\\|ss\\|chs?\\|chains?\\|spikes?\\|inc\\(?:'d\\|s\\|rease[sd]?\\)?\\|\\(?:inv\\)?dec\\(?:'d\\|s\\|rease[sd]?\\)?\\|clusters?\\|cls?\\|bobbles?\\|bo\\|puffs?\\|popcorns?\\|pcs?\\|ps\\|shells?\\|sh\\|fans?\\|picots?\\|purls?\\|v-?sts?\\|v[ \t]st\\(?:itch\\)?\\(?:s\\|es\\)?\\|crab\\|knit\\|fwd?p\\|retp\\|\\(?:forward\\|return\\)[ \t]pass\\(?:es\\)?\\)\\b\\(?:[s-]?\\(?:\\(?:two\\|three\\|four\\|five\\|six\\|seven\\|eight\\|nine\\|[0-9]\\)[ \t]?\\(?:tog\\(?:ether\\|s\\)?\\)\\|together\\|togs?\\|trc?\\|dc\\|sc\\|d\\|c\\|crochets?\\|trebles?\\|doubles?\\|triples?\\|singles?\\|\\(?:front\\|back\\)[ \t]posts?\\|posts?\\|front\\|back\\|fp\\|bp\\|v[ \t]sts?\\|v[ \t]stitch\\(?:es\\)?\\|v-?sts?\\|inv\\(?:isible\\)?[ \t]dec\\(?:rease\\)?s?\\|clusters?\\|cls?\\|bobbles?\\|bo\\|puffs?\\|popcorns?\\|pcs?\\|picots?\\|shells?\\|fans?\\|spikes?\\|dec\\(?:rease\\)?s?\\|inc\\(?:rease\\)?s?\\|sts?\\|stitch\\(?:es\\)?\\)\\b\\)*" . 'font-lock-builtin-face)
    ;; what is done other than stitches
    ("\\b\\(?:rep\\(?:eat\\)?s?\\|rpt\\|skip\\(?:ped\\)?\\|sk\\|miss\\(?:ed\\)?\\|turn\\(?:ed\\)?\\|join\\(?:ed\\)?\\|fasten\\(?:ed\\)?\\(?:[ \t]off\\)?\\|fo\\|weave\\(?:[ \t]in\\)?\\|change\\|switch\\|place\\|move\\|pm\\|leave\\|leaving\\|continue\\|work\\(?:ed\\)?\\|return\\|make\\|cut\\|break\\|sew\\|stuff\\|times\\|once\\|twice\\|more\\|not\\)\\b" . 'font-lock-keyword-face)
    ;; the stars and brackets of repeats and groups
    ("[*[]()]" . 'font-lock-preprocessor-face)
    ;; numbers
    ("\\b[0-9]+\\(?:\\.[0-9]+\\)?\\b" . 'font-lock-string-face))
  "What is coloured in a pattern, and how; what is named first goes first.")

(provide 'crochet-colours)
;;; crochet-colours.el ends here
