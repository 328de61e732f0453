#include "tree_sitter/parser.h"

#if defined(__GNUC__) || defined(__clang__)
#pragma GCC diagnostic ignored "-Wmissing-field-initializers"
#endif

#ifdef _MSC_VER
#pragma optimize("", off)
#elif defined(__clang__)
#pragma clang optimize off
#elif defined(__GNUC__)
#pragma GCC optimize ("O0")
#endif

#define LANGUAGE_VERSION 14
#define STATE_COUNT 20
#define LARGE_STATE_COUNT 15
#define SYMBOL_COUNT 28
#define ALIAS_COUNT 0
#define TOKEN_COUNT 19
#define EXTERNAL_TOKEN_COUNT 0
#define FIELD_COUNT 0
#define MAX_ALIAS_SEQUENCE_LENGTH 3
#define PRODUCTION_ID_COUNT 1

enum ts_symbol_identifiers {
  aux_sym_pattern_token1 = 1,
  sym__space = 2,
  sym_comment = 3,
  sym_heading = 4,
  sym_label = 5,
  sym_field = 6,
  sym_count = 7,
  aux_sym_stitch_token1 = 8,
  aux_sym_stitch_token2 = 9,
  sym__no_more = 10,
  sym_action = 11,
  sym_bracket = 12,
  sym_number = 13,
  aux_sym__other_token1 = 14,
  aux_sym__other_token2 = 15,
  aux_sym__other_token3 = 16,
  aux_sym__other_token4 = 17,
  aux_sym__other_token5 = 18,
  sym_pattern = 19,
  sym__line = 20,
  sym__part = 21,
  sym__word_or_sign = 22,
  sym_stitch = 23,
  sym__other = 24,
  aux_sym_pattern_repeat1 = 25,
  aux_sym__line_repeat1 = 26,
  aux_sym_stitch_repeat1 = 27,
};

static const char * const ts_symbol_names[] = {
  [ts_builtin_sym_end] = "end",
  [aux_sym_pattern_token1] = "pattern_token1",
  [sym__space] = "_space",
  [sym_comment] = "comment",
  [sym_heading] = "heading",
  [sym_label] = "label",
  [sym_field] = "field",
  [sym_count] = "count",
  [aux_sym_stitch_token1] = "stitch_token1",
  [aux_sym_stitch_token2] = "stitch_token2",
  [sym__no_more] = "_no_more",
  [sym_action] = "action",
  [sym_bracket] = "bracket",
  [sym_number] = "number",
  [aux_sym__other_token1] = "_other_token1",
  [aux_sym__other_token2] = "_other_token2",
  [aux_sym__other_token3] = "_other_token3",
  [aux_sym__other_token4] = "_other_token4",
  [aux_sym__other_token5] = "_other_token5",
  [sym_pattern] = "pattern",
  [sym__line] = "_line",
  [sym__part] = "_part",
  [sym__word_or_sign] = "_word_or_sign",
  [sym_stitch] = "stitch",
  [sym__other] = "_other",
  [aux_sym_pattern_repeat1] = "pattern_repeat1",
  [aux_sym__line_repeat1] = "_line_repeat1",
  [aux_sym_stitch_repeat1] = "stitch_repeat1",
};

static const TSSymbol ts_symbol_map[] = {
  [ts_builtin_sym_end] = ts_builtin_sym_end,
  [aux_sym_pattern_token1] = aux_sym_pattern_token1,
  [sym__space] = sym__space,
  [sym_comment] = sym_comment,
  [sym_heading] = sym_heading,
  [sym_label] = sym_label,
  [sym_field] = sym_field,
  [sym_count] = sym_count,
  [aux_sym_stitch_token1] = aux_sym_stitch_token1,
  [aux_sym_stitch_token2] = aux_sym_stitch_token2,
  [sym__no_more] = sym__no_more,
  [sym_action] = sym_action,
  [sym_bracket] = sym_bracket,
  [sym_number] = sym_number,
  [aux_sym__other_token1] = aux_sym__other_token1,
  [aux_sym__other_token2] = aux_sym__other_token2,
  [aux_sym__other_token3] = aux_sym__other_token3,
  [aux_sym__other_token4] = aux_sym__other_token4,
  [aux_sym__other_token5] = aux_sym__other_token5,
  [sym_pattern] = sym_pattern,
  [sym__line] = sym__line,
  [sym__part] = sym__part,
  [sym__word_or_sign] = sym__word_or_sign,
  [sym_stitch] = sym_stitch,
  [sym__other] = sym__other,
  [aux_sym_pattern_repeat1] = aux_sym_pattern_repeat1,
  [aux_sym__line_repeat1] = aux_sym__line_repeat1,
  [aux_sym_stitch_repeat1] = aux_sym_stitch_repeat1,
};

static const TSSymbolMetadata ts_symbol_metadata[] = {
  [ts_builtin_sym_end] = {
    .visible = false,
    .named = true,
  },
  [aux_sym_pattern_token1] = {
    .visible = false,
    .named = false,
  },
  [sym__space] = {
    .visible = false,
    .named = true,
  },
  [sym_comment] = {
    .visible = true,
    .named = true,
  },
  [sym_heading] = {
    .visible = true,
    .named = true,
  },
  [sym_label] = {
    .visible = true,
    .named = true,
  },
  [sym_field] = {
    .visible = true,
    .named = true,
  },
  [sym_count] = {
    .visible = true,
    .named = true,
  },
  [aux_sym_stitch_token1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_stitch_token2] = {
    .visible = false,
    .named = false,
  },
  [sym__no_more] = {
    .visible = false,
    .named = true,
  },
  [sym_action] = {
    .visible = true,
    .named = true,
  },
  [sym_bracket] = {
    .visible = true,
    .named = true,
  },
  [sym_number] = {
    .visible = true,
    .named = true,
  },
  [aux_sym__other_token1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__other_token2] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__other_token3] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__other_token4] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__other_token5] = {
    .visible = false,
    .named = false,
  },
  [sym_pattern] = {
    .visible = true,
    .named = true,
  },
  [sym__line] = {
    .visible = false,
    .named = true,
  },
  [sym__part] = {
    .visible = false,
    .named = true,
  },
  [sym__word_or_sign] = {
    .visible = false,
    .named = true,
  },
  [sym_stitch] = {
    .visible = true,
    .named = true,
  },
  [sym__other] = {
    .visible = false,
    .named = true,
  },
  [aux_sym_pattern_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__line_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_stitch_repeat1] = {
    .visible = false,
    .named = false,
  },
};

static const TSSymbol ts_alias_sequences[PRODUCTION_ID_COUNT][MAX_ALIAS_SEQUENCE_LENGTH] = {
  [0] = {0},
};

static const uint16_t ts_non_terminal_alias_map[] = {
  0,
};

static const TSStateId ts_primary_state_ids[STATE_COUNT] = {
  [0] = 0,
  [1] = 1,
  [2] = 2,
  [3] = 3,
  [4] = 4,
  [5] = 5,
  [6] = 6,
  [7] = 7,
  [8] = 8,
  [9] = 9,
  [10] = 10,
  [11] = 11,
  [12] = 12,
  [13] = 13,
  [14] = 14,
  [15] = 15,
  [16] = 16,
  [17] = 17,
  [18] = 18,
  [19] = 19,
};

static TSCharacterRange sym_count_character_set_2[] = {
  {0, '\t'}, {0x0b, '\''}, {')', '/'}, {':', '@'}, {'[', '^'}, {'`', '`'}, {'{', 0xa9}, {0xab, 0xb4},
  {0xb6, 0xb9}, {0xbb, 0xbf}, {0xd7, 0xd7}, {0xf7, 0xf7}, {0x2c2, 0x2c5}, {0x2d2, 0x2df}, {0x2e5, 0x2eb}, {0x2ed, 0x2ed},
  {0x2ef, 0x36f}, {0x375, 0x375}, {0x378, 0x379}, {0x37e, 0x37e}, {0x380, 0x385}, {0x387, 0x387}, {0x38b, 0x38b}, {0x38d, 0x38d},
  {0x3a2, 0x3a2}, {0x3f6, 0x3f6}, {0x482, 0x489}, {0x530, 0x530}, {0x557, 0x558}, {0x55a, 0x55f}, {0x589, 0x5cf}, {0x5eb, 0x5ee},
  {0x5f3, 0x61f}, {0x64b, 0x65f}, {0x66a, 0x66d}, {0x670, 0x670}, {0x6d4, 0x6d4}, {0x6d6, 0x6e4}, {0x6e7, 0x6ed}, {0x6fd, 0x6fe},
  {0x700, 0x70f}, {0x711, 0x711}, {0x730, 0x74c}, {0x7a6, 0x7b0}, {0x7b2, 0x7bf}, {0x7eb, 0x7f3}, {0x7f6, 0x7f9}, {0x7fb, 0x7ff},
  {0x816, 0x819}, {0x81b, 0x823}, {0x825, 0x827}, {0x829, 0x83f}, {0x859, 0x85f}, {0x86b, 0x86f}, {0x888, 0x888}, {0x88f, 0x89f},
  {0x8ca, 0x903}, {0x93a, 0x93c}, {0x93e, 0x94f}, {0x951, 0x957}, {0x962, 0x965}, {0x970, 0x970}, {0x981, 0x984}, {0x98d, 0x98e},
  {0x991, 0x992}, {0x9a9, 0x9a9}, {0x9b1, 0x9b1}, {0x9b3, 0x9b5}, {0x9ba, 0x9bc}, {0x9be, 0x9cd}, {0x9cf, 0x9db}, {0x9de, 0x9de},
  {0x9e2, 0x9e5}, {0x9f2, 0x9fb}, {0x9fd, 0xa04}, {0xa0b, 0xa0e}, {0xa11, 0xa12}, {0xa29, 0xa29}, {0xa31, 0xa31}, {0xa34, 0xa34},
  {0xa37, 0xa37}, {0xa3a, 0xa58}, {0xa5d, 0xa5d}, {0xa5f, 0xa65}, {0xa70, 0xa71}, {0xa75, 0xa84}, {0xa8e, 0xa8e}, {0xa92, 0xa92},
  {0xaa9, 0xaa9}, {0xab1, 0xab1}, {0xab4, 0xab4}, {0xaba, 0xabc}, {0xabe, 0xacf}, {0xad1, 0xadf}, {0xae2, 0xae5}, {0xaf0, 0xaf8},
  {0xafa, 0xb04}, {0xb0d, 0xb0e}, {0xb11, 0xb12}, {0xb29, 0xb29}, {0xb31, 0xb31}, {0xb34, 0xb34}, {0xb3a, 0xb3c}, {0xb3e, 0xb5b},
  {0xb5e, 0xb5e}, {0xb62, 0xb65}, {0xb70, 0xb70}, {0xb72, 0xb82}, {0xb84, 0xb84}, {0xb8b, 0xb8d}, {0xb91, 0xb91}, {0xb96, 0xb98},
  {0xb9b, 0xb9b}, {0xb9d, 0xb9d}, {0xba0, 0xba2}, {0xba5, 0xba7}, {0xbab, 0xbad}, {0xbba, 0xbcf}, {0xbd1, 0xbe5}, {0xbf0, 0xc04},
  {0xc0d, 0xc0d}, {0xc11, 0xc11}, {0xc29, 0xc29}, {0xc3a, 0xc3c}, {0xc3e, 0xc57}, {0xc5b, 0xc5c}, {0xc5e, 0xc5f}, {0xc62, 0xc65},
  {0xc70, 0xc7f}, {0xc81, 0xc84}, {0xc8d, 0xc8d}, {0xc91, 0xc91}, {0xca9, 0xca9}, {0xcb4, 0xcb4}, {0xcba, 0xcbc}, {0xcbe, 0xcdc},
  {0xcdf, 0xcdf}, {0xce2, 0xce5}, {0xcf0, 0xcf0}, {0xcf3, 0xd03}, {0xd0d, 0xd0d}, {0xd11, 0xd11}, {0xd3b, 0xd3c}, {0xd3e, 0xd4d},
  {0xd4f, 0xd53}, {0xd57, 0xd5e}, {0xd62, 0xd65}, {0xd70, 0xd79}, {0xd80, 0xd84}, {0xd97, 0xd99}, {0xdb2, 0xdb2}, {0xdbc, 0xdbc},
  {0xdbe, 0xdbf}, {0xdc7, 0xde5}, {0xdf0, 0xe00}, {0xe31, 0xe31}, {0xe34, 0xe3f}, {0xe47, 0xe4f}, {0xe5a, 0xe80}, {0xe83, 0xe83},
  {0xe85, 0xe85}, {0xe8b, 0xe8b}, {0xea4, 0xea4}, {0xea6, 0xea6}, {0xeb1, 0xeb1}, {0xeb4, 0xebc}, {0xebe, 0xebf}, {0xec5, 0xec5},
  {0xec7, 0xecf}, {0xeda, 0xedb}, {0xee0, 0xeff}, {0xf01, 0xf1f}, {0xf2a, 0xf3f}, {0xf48, 0xf48}, {0xf6d, 0xf87}, {0xf8d, 0xfff},
  {0x102b, 0x103e}, {0x104a, 0x104f}, {0x1056, 0x1059}, {0x105e, 0x1060}, {0x1062, 0x1064}, {0x1067, 0x106d}, {0x1071, 0x1074}, {0x1082, 0x108d},
  {0x108f, 0x108f}, {0x109a, 0x109f}, {0x10c6, 0x10c6}, {0x10c8, 0x10cc}, {0x10ce, 0x10cf}, {0x10fb, 0x10fb}, {0x1249, 0x1249}, {0x124e, 0x124f},
  {0x1257, 0x1257}, {0x1259, 0x1259}, {0x125e, 0x125f}, {0x1289, 0x1289}, {0x128e, 0x128f}, {0x12b1, 0x12b1}, {0x12b6, 0x12b7}, {0x12bf, 0x12bf},
  {0x12c1, 0x12c1}, {0x12c6, 0x12c7}, {0x12d7, 0x12d7}, {0x1311, 0x1311}, {0x1316, 0x1317}, {0x135b, 0x137f}, {0x1390, 0x139f}, {0x13f6, 0x13f7},
  {0x13fe, 0x1400}, {0x166d, 0x166e}, {0x1680, 0x1680}, {0x169b, 0x169f}, {0x16eb, 0x16f0}, {0x16f9, 0x16ff}, {0x1712, 0x171e}, {0x1732, 0x173f},
  {0x1752, 0x175f}, {0x176d, 0x176d}, {0x1771, 0x177f}, {0x17b4, 0x17d6}, {0x17d8, 0x17db}, {0x17dd, 0x17df}, {0x17ea, 0x180f}, {0x181a, 0x181f},
  {0x1879, 0x187f}, {0x1885, 0x1886}, {0x18a9, 0x18a9}, {0x18ab, 0x18af}, {0x18f6, 0x18ff}, {0x191f, 0x1945}, {0x196e, 0x196f}, {0x1975, 0x197f},
  {0x19ac, 0x19af}, {0x19ca, 0x19cf}, {0x19da, 0x19ff}, {0x1a17, 0x1a1f}, {0x1a55, 0x1a7f}, {0x1a8a, 0x1a8f}, {0x1a9a, 0x1aa6}, {0x1aa8, 0x1b04},
  {0x1b34, 0x1b44}, {0x1b4d, 0x1b4f}, {0x1b5a, 0x1b82}, {0x1ba1, 0x1bad}, {0x1be6, 0x1bff}, {0x1c24, 0x1c3f}, {0x1c4a, 0x1c4c}, {0x1c7e, 0x1c7f},
  {0x1c89, 0x1c8f}, {0x1cbb, 0x1cbc}, {0x1cc0, 0x1ce8}, {0x1ced, 0x1ced}, {0x1cf4, 0x1cf4}, {0x1cf7, 0x1cf9}, {0x1cfb, 0x1cff}, {0x1dc0, 0x1dff},
  {0x1f16, 0x1f17}, {0x1f1e, 0x1f1f}, {0x1f46, 0x1f47}, {0x1f4e, 0x1f4f}, {0x1f58, 0x1f58}, {0x1f5a, 0x1f5a}, {0x1f5c, 0x1f5c}, {0x1f5e, 0x1f5e},
  {0x1f7e, 0x1f7f}, {0x1fb5, 0x1fb5}, {0x1fbd, 0x1fbd}, {0x1fbf, 0x1fc1}, {0x1fc5, 0x1fc5}, {0x1fcd, 0x1fcf}, {0x1fd4, 0x1fd5}, {0x1fdc, 0x1fdf},
  {0x1fed, 0x1ff1}, {0x1ff5, 0x1ff5}, {0x1ffd, 0x2070}, {0x2072, 0x207e}, {0x2080, 0x208f}, {0x209d, 0x2101}, {0x2103, 0x2106}, {0x2108, 0x2109},
  {0x2114, 0x2114}, {0x2116, 0x2118}, {0x211e, 0x2123}, {0x2125, 0x2125}, {0x2127, 0x2127}, {0x2129, 0x2129}, {0x212e, 0x212e}, {0x213a, 0x213b},
  {0x2140, 0x2144}, {0x214a, 0x214d}, {0x214f, 0x2182}, {0x2185, 0x2bff}, {0x2ce5, 0x2cea}, {0x2cef, 0x2cf1}, {0x2cf4, 0x2cff}, {0x2d26, 0x2d26},
  {0x2d28, 0x2d2c}, {0x2d2e, 0x2d2f}, {0x2d68, 0x2d6e}, {0x2d70, 0x2d7f}, {0x2d97, 0x2d9f}, {0x2da7, 0x2da7}, {0x2daf, 0x2daf}, {0x2db7, 0x2db7},
  {0x2dbf, 0x2dbf}, {0x2dc7, 0x2dc7}, {0x2dcf, 0x2dcf}, {0x2dd7, 0x2dd7}, {0x2ddf, 0x2e2e}, {0x2e30, 0x3004}, {0x3007, 0x3030}, {0x3036, 0x303a},
  {0x303d, 0x3040}, {0x3097, 0x309c}, {0x30a0, 0x30a0}, {0x30fb, 0x30fb}, {0x3100, 0x3104}, {0x3130, 0x3130}, {0x318f, 0x319f}, {0x31c0, 0x31ef},
  {0x3200, 0x33ff}, {0x3401, 0x4dbe}, {0x4dc0, 0x4dff}, {0x4e01, 0x9ffe}, {0xa48d, 0xa4cf}, {0xa4fe, 0xa4ff}, {0xa60d, 0xa60f}, {0xa62c, 0xa63f},
  {0xa66f, 0xa67e}, {0xa69e, 0xa69f}, {0xa6e6, 0xa716}, {0xa720, 0xa721}, {0xa789, 0xa78a}, {0xa7cb, 0xa7cf}, {0xa7d2, 0xa7d2}, {0xa7d4, 0xa7d4},
  {0xa7da, 0xa7f1}, {0xa802, 0xa802}, {0xa806, 0xa806}, {0xa80b, 0xa80b}, {0xa823, 0xa83f}, {0xa874, 0xa881}, {0xa8b4, 0xa8cf}, {0xa8da, 0xa8f1},
  {0xa8f8, 0xa8fa}, {0xa8fc, 0xa8fc}, {0xa8ff, 0xa8ff}, {0xa926, 0xa92f}, {0xa947, 0xa95f}, {0xa97d, 0xa983}, {0xa9b3, 0xa9ce}, {0xa9da, 0xa9df},
  {0xa9e5, 0xa9e5}, {0xa9ff, 0xa9ff}, {0xaa29, 0xaa3f}, {0xaa43, 0xaa43}, {0xaa4c, 0xaa4f}, {0xaa5a, 0xaa5f}, {0xaa77, 0xaa79}, {0xaa7b, 0xaa7d},
  {0xaab0, 0xaab0}, {0xaab2, 0xaab4}, {0xaab7, 0xaab8}, {0xaabe, 0xaabf}, {0xaac1, 0xaac1}, {0xaac3, 0xaada}, {0xaade, 0xaadf}, {0xaaeb, 0xaaf1},
  {0xaaf5, 0xab00}, {0xab07, 0xab08}, {0xab0f, 0xab10}, {0xab17, 0xab1f}, {0xab27, 0xab27}, {0xab2f, 0xab2f}, {0xab5b, 0xab5b}, {0xab6a, 0xab6f},
  {0xabe3, 0xabef}, {0xabfa, 0xabff}, {0xac01, 0xd7a2}, {0xd7a4, 0xd7af}, {0xd7c7, 0xd7ca}, {0xd7fc, 0xf8ff}, {0xfa6e, 0xfa6f}, {0xfada, 0xfaff},
  {0xfb07, 0xfb12}, {0xfb18, 0xfb1c}, {0xfb1e, 0xfb1e}, {0xfb29, 0xfb29}, {0xfb37, 0xfb37}, {0xfb3d, 0xfb3d}, {0xfb3f, 0xfb3f}, {0xfb42, 0xfb42},
  {0xfb45, 0xfb45}, {0xfbb2, 0xfbd2}, {0xfd3e, 0xfd4f}, {0xfd90, 0xfd91}, {0xfdc8, 0xfdef}, {0xfdfc, 0xfe6f}, {0xfe75, 0xfe75}, {0xfefd, 0xff0f},
  {0xff1a, 0xff20}, {0xff3b, 0xff40}, {0xff5b, 0xff65}, {0xffbf, 0xffc1}, {0xffc8, 0xffc9}, {0xffd0, 0xffd1}, {0xffd8, 0xffd9}, {0xffdd, 0xffff},
  {0x1000c, 0x1000c}, {0x10027, 0x10027}, {0x1003b, 0x1003b}, {0x1003e, 0x1003e}, {0x1004e, 0x1004f}, {0x1005e, 0x1007f}, {0x100fb, 0x1027f}, {0x1029d, 0x1029f},
  {0x102d1, 0x102ff}, {0x10320, 0x1032c}, {0x10341, 0x10341}, {0x1034a, 0x1034f}, {0x10376, 0x1037f}, {0x1039e, 0x1039f}, {0x103c4, 0x103c7}, {0x103d0, 0x103ff},
  {0x1049e, 0x1049f}, {0x104aa, 0x104af}, {0x104d4, 0x104d7}, {0x104fc, 0x104ff}, {0x10528, 0x1052f}, {0x10564, 0x1056f}, {0x1057b, 0x1057b}, {0x1058b, 0x1058b},
  {0x10593, 0x10593}, {0x10596, 0x10596}, {0x105a2, 0x105a2}, {0x105b2, 0x105b2}, {0x105ba, 0x105ba}, {0x105bd, 0x105ff}, {0x10737, 0x1073f}, {0x10756, 0x1075f},
  {0x10768, 0x1077f}, {0x10786, 0x10786}, {0x107b1, 0x107b1}, {0x107bb, 0x107ff}, {0x10806, 0x10807}, {0x10809, 0x10809}, {0x10836, 0x10836}, {0x10839, 0x1083b},
  {0x1083d, 0x1083e}, {0x10856, 0x1085f}, {0x10877, 0x1087f}, {0x1089f, 0x108df}, {0x108f3, 0x108f3}, {0x108f6, 0x108ff}, {0x10916, 0x1091f}, {0x1092c, 0x10ffff},
};

static TSCharacterRange sym_count_character_set_3[] = {
  {0, '\t'}, {0x0b, '\''}, {')', '/'}, {':', '@'}, {'I', 'I'}, {'S', 'S'}, {'[', '^'}, {'`', '`'},
  {'i', 'i'}, {'s', 's'}, {'{', 0xa9}, {0xab, 0xb4}, {0xb6, 0xb9}, {0xbb, 0xbf}, {0xd7, 0xd7}, {0xf7, 0xf7},
  {0x2c2, 0x2c5}, {0x2d2, 0x2df}, {0x2e5, 0x2eb}, {0x2ed, 0x2ed}, {0x2ef, 0x36f}, {0x375, 0x375}, {0x378, 0x379}, {0x37e, 0x37e},
  {0x380, 0x385}, {0x387, 0x387}, {0x38b, 0x38b}, {0x38d, 0x38d}, {0x3a2, 0x3a2}, {0x3f6, 0x3f6}, {0x482, 0x489}, {0x530, 0x530},
  {0x557, 0x558}, {0x55a, 0x55f}, {0x589, 0x5cf}, {0x5eb, 0x5ee}, {0x5f3, 0x61f}, {0x64b, 0x65f}, {0x66a, 0x66d}, {0x670, 0x670},
  {0x6d4, 0x6d4}, {0x6d6, 0x6e4}, {0x6e7, 0x6ed}, {0x6fd, 0x6fe}, {0x700, 0x70f}, {0x711, 0x711}, {0x730, 0x74c}, {0x7a6, 0x7b0},
  {0x7b2, 0x7bf}, {0x7eb, 0x7f3}, {0x7f6, 0x7f9}, {0x7fb, 0x7ff}, {0x816, 0x819}, {0x81b, 0x823}, {0x825, 0x827}, {0x829, 0x83f},
  {0x859, 0x85f}, {0x86b, 0x86f}, {0x888, 0x888}, {0x88f, 0x89f}, {0x8ca, 0x903}, {0x93a, 0x93c}, {0x93e, 0x94f}, {0x951, 0x957},
  {0x962, 0x965}, {0x970, 0x970}, {0x981, 0x984}, {0x98d, 0x98e}, {0x991, 0x992}, {0x9a9, 0x9a9}, {0x9b1, 0x9b1}, {0x9b3, 0x9b5},
  {0x9ba, 0x9bc}, {0x9be, 0x9cd}, {0x9cf, 0x9db}, {0x9de, 0x9de}, {0x9e2, 0x9e5}, {0x9f2, 0x9fb}, {0x9fd, 0xa04}, {0xa0b, 0xa0e},
  {0xa11, 0xa12}, {0xa29, 0xa29}, {0xa31, 0xa31}, {0xa34, 0xa34}, {0xa37, 0xa37}, {0xa3a, 0xa58}, {0xa5d, 0xa5d}, {0xa5f, 0xa65},
  {0xa70, 0xa71}, {0xa75, 0xa84}, {0xa8e, 0xa8e}, {0xa92, 0xa92}, {0xaa9, 0xaa9}, {0xab1, 0xab1}, {0xab4, 0xab4}, {0xaba, 0xabc},
  {0xabe, 0xacf}, {0xad1, 0xadf}, {0xae2, 0xae5}, {0xaf0, 0xaf8}, {0xafa, 0xb04}, {0xb0d, 0xb0e}, {0xb11, 0xb12}, {0xb29, 0xb29},
  {0xb31, 0xb31}, {0xb34, 0xb34}, {0xb3a, 0xb3c}, {0xb3e, 0xb5b}, {0xb5e, 0xb5e}, {0xb62, 0xb65}, {0xb70, 0xb70}, {0xb72, 0xb82},
  {0xb84, 0xb84}, {0xb8b, 0xb8d}, {0xb91, 0xb91}, {0xb96, 0xb98}, {0xb9b, 0xb9b}, {0xb9d, 0xb9d}, {0xba0, 0xba2}, {0xba5, 0xba7},
  {0xbab, 0xbad}, {0xbba, 0xbcf}, {0xbd1, 0xbe5}, {0xbf0, 0xc04}, {0xc0d, 0xc0d}, {0xc11, 0xc11}, {0xc29, 0xc29}, {0xc3a, 0xc3c},
  {0xc3e, 0xc57}, {0xc5b, 0xc5c}, {0xc5e, 0xc5f}, {0xc62, 0xc65}, {0xc70, 0xc7f}, {0xc81, 0xc84}, {0xc8d, 0xc8d}, {0xc91, 0xc91},
  {0xca9, 0xca9}, {0xcb4, 0xcb4}, {0xcba, 0xcbc}, {0xcbe, 0xcdc}, {0xcdf, 0xcdf}, {0xce2, 0xce5}, {0xcf0, 0xcf0}, {0xcf3, 0xd03},
  {0xd0d, 0xd0d}, {0xd11, 0xd11}, {0xd3b, 0xd3c}, {0xd3e, 0xd4d}, {0xd4f, 0xd53}, {0xd57, 0xd5e}, {0xd62, 0xd65}, {0xd70, 0xd79},
  {0xd80, 0xd84}, {0xd97, 0xd99}, {0xdb2, 0xdb2}, {0xdbc, 0xdbc}, {0xdbe, 0xdbf}, {0xdc7, 0xde5}, {0xdf0, 0xe00}, {0xe31, 0xe31},
  {0xe34, 0xe3f}, {0xe47, 0xe4f}, {0xe5a, 0xe80}, {0xe83, 0xe83}, {0xe85, 0xe85}, {0xe8b, 0xe8b}, {0xea4, 0xea4}, {0xea6, 0xea6},
  {0xeb1, 0xeb1}, {0xeb4, 0xebc}, {0xebe, 0xebf}, {0xec5, 0xec5}, {0xec7, 0xecf}, {0xeda, 0xedb}, {0xee0, 0xeff}, {0xf01, 0xf1f},
  {0xf2a, 0xf3f}, {0xf48, 0xf48}, {0xf6d, 0xf87}, {0xf8d, 0xfff}, {0x102b, 0x103e}, {0x104a, 0x104f}, {0x1056, 0x1059}, {0x105e, 0x1060},
  {0x1062, 0x1064}, {0x1067, 0x106d}, {0x1071, 0x1074}, {0x1082, 0x108d}, {0x108f, 0x108f}, {0x109a, 0x109f}, {0x10c6, 0x10c6}, {0x10c8, 0x10cc},
  {0x10ce, 0x10cf}, {0x10fb, 0x10fb}, {0x1249, 0x1249}, {0x124e, 0x124f}, {0x1257, 0x1257}, {0x1259, 0x1259}, {0x125e, 0x125f}, {0x1289, 0x1289},
  {0x128e, 0x128f}, {0x12b1, 0x12b1}, {0x12b6, 0x12b7}, {0x12bf, 0x12bf}, {0x12c1, 0x12c1}, {0x12c6, 0x12c7}, {0x12d7, 0x12d7}, {0x1311, 0x1311},
  {0x1316, 0x1317}, {0x135b, 0x137f}, {0x1390, 0x139f}, {0x13f6, 0x13f7}, {0x13fe, 0x1400}, {0x166d, 0x166e}, {0x1680, 0x1680}, {0x169b, 0x169f},
  {0x16eb, 0x16f0}, {0x16f9, 0x16ff}, {0x1712, 0x171e}, {0x1732, 0x173f}, {0x1752, 0x175f}, {0x176d, 0x176d}, {0x1771, 0x177f}, {0x17b4, 0x17d6},
  {0x17d8, 0x17db}, {0x17dd, 0x17df}, {0x17ea, 0x180f}, {0x181a, 0x181f}, {0x1879, 0x187f}, {0x1885, 0x1886}, {0x18a9, 0x18a9}, {0x18ab, 0x18af},
  {0x18f6, 0x18ff}, {0x191f, 0x1945}, {0x196e, 0x196f}, {0x1975, 0x197f}, {0x19ac, 0x19af}, {0x19ca, 0x19cf}, {0x19da, 0x19ff}, {0x1a17, 0x1a1f},
  {0x1a55, 0x1a7f}, {0x1a8a, 0x1a8f}, {0x1a9a, 0x1aa6}, {0x1aa8, 0x1b04}, {0x1b34, 0x1b44}, {0x1b4d, 0x1b4f}, {0x1b5a, 0x1b82}, {0x1ba1, 0x1bad},
  {0x1be6, 0x1bff}, {0x1c24, 0x1c3f}, {0x1c4a, 0x1c4c}, {0x1c7e, 0x1c7f}, {0x1c89, 0x1c8f}, {0x1cbb, 0x1cbc}, {0x1cc0, 0x1ce8}, {0x1ced, 0x1ced},
  {0x1cf4, 0x1cf4}, {0x1cf7, 0x1cf9}, {0x1cfb, 0x1cff}, {0x1dc0, 0x1dff}, {0x1f16, 0x1f17}, {0x1f1e, 0x1f1f}, {0x1f46, 0x1f47}, {0x1f4e, 0x1f4f},
  {0x1f58, 0x1f58}, {0x1f5a, 0x1f5a}, {0x1f5c, 0x1f5c}, {0x1f5e, 0x1f5e}, {0x1f7e, 0x1f7f}, {0x1fb5, 0x1fb5}, {0x1fbd, 0x1fbd}, {0x1fbf, 0x1fc1},
  {0x1fc5, 0x1fc5}, {0x1fcd, 0x1fcf}, {0x1fd4, 0x1fd5}, {0x1fdc, 0x1fdf}, {0x1fed, 0x1ff1}, {0x1ff5, 0x1ff5}, {0x1ffd, 0x2070}, {0x2072, 0x207e},
  {0x2080, 0x208f}, {0x209d, 0x2101}, {0x2103, 0x2106}, {0x2108, 0x2109}, {0x2114, 0x2114}, {0x2116, 0x2118}, {0x211e, 0x2123}, {0x2125, 0x2125},
  {0x2127, 0x2127}, {0x2129, 0x2129}, {0x212e, 0x212e}, {0x213a, 0x213b}, {0x2140, 0x2144}, {0x214a, 0x214d}, {0x214f, 0x2182}, {0x2185, 0x2bff},
  {0x2ce5, 0x2cea}, {0x2cef, 0x2cf1}, {0x2cf4, 0x2cff}, {0x2d26, 0x2d26}, {0x2d28, 0x2d2c}, {0x2d2e, 0x2d2f}, {0x2d68, 0x2d6e}, {0x2d70, 0x2d7f},
  {0x2d97, 0x2d9f}, {0x2da7, 0x2da7}, {0x2daf, 0x2daf}, {0x2db7, 0x2db7}, {0x2dbf, 0x2dbf}, {0x2dc7, 0x2dc7}, {0x2dcf, 0x2dcf}, {0x2dd7, 0x2dd7},
  {0x2ddf, 0x2e2e}, {0x2e30, 0x3004}, {0x3007, 0x3030}, {0x3036, 0x303a}, {0x303d, 0x3040}, {0x3097, 0x309c}, {0x30a0, 0x30a0}, {0x30fb, 0x30fb},
  {0x3100, 0x3104}, {0x3130, 0x3130}, {0x318f, 0x319f}, {0x31c0, 0x31ef}, {0x3200, 0x33ff}, {0x3401, 0x4dbe}, {0x4dc0, 0x4dff}, {0x4e01, 0x9ffe},
  {0xa48d, 0xa4cf}, {0xa4fe, 0xa4ff}, {0xa60d, 0xa60f}, {0xa62c, 0xa63f}, {0xa66f, 0xa67e}, {0xa69e, 0xa69f}, {0xa6e6, 0xa716}, {0xa720, 0xa721},
  {0xa789, 0xa78a}, {0xa7cb, 0xa7cf}, {0xa7d2, 0xa7d2}, {0xa7d4, 0xa7d4}, {0xa7da, 0xa7f1}, {0xa802, 0xa802}, {0xa806, 0xa806}, {0xa80b, 0xa80b},
  {0xa823, 0xa83f}, {0xa874, 0xa881}, {0xa8b4, 0xa8cf}, {0xa8da, 0xa8f1}, {0xa8f8, 0xa8fa}, {0xa8fc, 0xa8fc}, {0xa8ff, 0xa8ff}, {0xa926, 0xa92f},
  {0xa947, 0xa95f}, {0xa97d, 0xa983}, {0xa9b3, 0xa9ce}, {0xa9da, 0xa9df}, {0xa9e5, 0xa9e5}, {0xa9ff, 0xa9ff}, {0xaa29, 0xaa3f}, {0xaa43, 0xaa43},
  {0xaa4c, 0xaa4f}, {0xaa5a, 0xaa5f}, {0xaa77, 0xaa79}, {0xaa7b, 0xaa7d}, {0xaab0, 0xaab0}, {0xaab2, 0xaab4}, {0xaab7, 0xaab8}, {0xaabe, 0xaabf},
  {0xaac1, 0xaac1}, {0xaac3, 0xaada}, {0xaade, 0xaadf}, {0xaaeb, 0xaaf1}, {0xaaf5, 0xab00}, {0xab07, 0xab08}, {0xab0f, 0xab10}, {0xab17, 0xab1f},
  {0xab27, 0xab27}, {0xab2f, 0xab2f}, {0xab5b, 0xab5b}, {0xab6a, 0xab6f}, {0xabe3, 0xabef}, {0xabfa, 0xabff}, {0xac01, 0xd7a2}, {0xd7a4, 0xd7af},
  {0xd7c7, 0xd7ca}, {0xd7fc, 0xf8ff}, {0xfa6e, 0xfa6f}, {0xfada, 0xfaff}, {0xfb07, 0xfb12}, {0xfb18, 0xfb1c}, {0xfb1e, 0xfb1e}, {0xfb29, 0xfb29},
  {0xfb37, 0xfb37}, {0xfb3d, 0xfb3d}, {0xfb3f, 0xfb3f}, {0xfb42, 0xfb42}, {0xfb45, 0xfb45}, {0xfbb2, 0xfbd2}, {0xfd3e, 0xfd4f}, {0xfd90, 0xfd91},
  {0xfdc8, 0xfdef}, {0xfdfc, 0xfe6f}, {0xfe75, 0xfe75}, {0xfefd, 0xff0f}, {0xff1a, 0xff20}, {0xff3b, 0xff40}, {0xff5b, 0xff65}, {0xffbf, 0xffc1},
  {0xffc8, 0xffc9}, {0xffd0, 0xffd1}, {0xffd8, 0xffd9}, {0xffdd, 0xffff}, {0x1000c, 0x1000c}, {0x10027, 0x10027}, {0x1003b, 0x1003b}, {0x1003e, 0x1003e},
  {0x1004e, 0x1004f}, {0x1005e, 0x1007f}, {0x100fb, 0x1027f}, {0x1029d, 0x1029f}, {0x102d1, 0x102ff}, {0x10320, 0x1032c}, {0x10341, 0x10341}, {0x1034a, 0x1034f},
  {0x10376, 0x1037f}, {0x1039e, 0x1039f}, {0x103c4, 0x103c7}, {0x103d0, 0x103ff}, {0x1049e, 0x1049f}, {0x104aa, 0x104af}, {0x104d4, 0x104d7}, {0x104fc, 0x104ff},
  {0x10528, 0x1052f}, {0x10564, 0x1056f}, {0x1057b, 0x1057b}, {0x1058b, 0x1058b}, {0x10593, 0x10593}, {0x10596, 0x10596}, {0x105a2, 0x105a2}, {0x105b2, 0x105b2},
  {0x105ba, 0x105ba}, {0x105bd, 0x105ff}, {0x10737, 0x1073f}, {0x10756, 0x1075f}, {0x10768, 0x1077f}, {0x10786, 0x10786}, {0x107b1, 0x107b1}, {0x107bb, 0x107ff},
  {0x10806, 0x10807}, {0x10809, 0x10809}, {0x10836, 0x10836}, {0x10839, 0x1083b}, {0x1083d, 0x1083e}, {0x10856, 0x1085f}, {0x10877, 0x1087f}, {0x1089f, 0x108df},
  {0x108f3, 0x108f3}, {0x108f6, 0x108ff}, {0x10916, 0x1091f}, {0x1092c, 0x10ffff},
};

static TSCharacterRange sym_count_character_set_4[] = {
  {0, '\t'}, {0x0b, '\''}, {')', '/'}, {':', '@'}, {'E', 'E'}, {'[', '^'}, {'`', '`'}, {'e', 'e'},
  {'{', 0xa9}, {0xab, 0xb4}, {0xb6, 0xb9}, {0xbb, 0xbf}, {0xd7, 0xd7}, {0xf7, 0xf7}, {0x2c2, 0x2c5}, {0x2d2, 0x2df},
  {0x2e5, 0x2eb}, {0x2ed, 0x2ed}, {0x2ef, 0x36f}, {0x375, 0x375}, {0x378, 0x379}, {0x37e, 0x37e}, {0x380, 0x385}, {0x387, 0x387},
  {0x38b, 0x38b}, {0x38d, 0x38d}, {0x3a2, 0x3a2}, {0x3f6, 0x3f6}, {0x482, 0x489}, {0x530, 0x530}, {0x557, 0x558}, {0x55a, 0x55f},
  {0x589, 0x5cf}, {0x5eb, 0x5ee}, {0x5f3, 0x61f}, {0x64b, 0x65f}, {0x66a, 0x66d}, {0x670, 0x670}, {0x6d4, 0x6d4}, {0x6d6, 0x6e4},
  {0x6e7, 0x6ed}, {0x6fd, 0x6fe}, {0x700, 0x70f}, {0x711, 0x711}, {0x730, 0x74c}, {0x7a6, 0x7b0}, {0x7b2, 0x7bf}, {0x7eb, 0x7f3},
  {0x7f6, 0x7f9}, {0x7fb, 0x7ff}, {0x816, 0x819}, {0x81b, 0x823}, {0x825, 0x827}, {0x829, 0x83f}, {0x859, 0x85f}, {0x86b, 0x86f},
  {0x888, 0x888}, {0x88f, 0x89f}, {0x8ca, 0x903}, {0x93a, 0x93c}, {0x93e, 0x94f}, {0x951, 0x957}, {0x962, 0x965}, {0x970, 0x970},
  {0x981, 0x984}, {0x98d, 0x98e}, {0x991, 0x992}, {0x9a9, 0x9a9}, {0x9b1, 0x9b1}, {0x9b3, 0x9b5}, {0x9ba, 0x9bc}, {0x9be, 0x9cd},
  {0x9cf, 0x9db}, {0x9de, 0x9de}, {0x9e2, 0x9e5}, {0x9f2, 0x9fb}, {0x9fd, 0xa04}, {0xa0b, 0xa0e}, {0xa11, 0xa12}, {0xa29, 0xa29},
  {0xa31, 0xa31}, {0xa34, 0xa34}, {0xa37, 0xa37}, {0xa3a, 0xa58}, {0xa5d, 0xa5d}, {0xa5f, 0xa65}, {0xa70, 0xa71}, {0xa75, 0xa84},
  {0xa8e, 0xa8e}, {0xa92, 0xa92}, {0xaa9, 0xaa9}, {0xab1, 0xab1}, {0xab4, 0xab4}, {0xaba, 0xabc}, {0xabe, 0xacf}, {0xad1, 0xadf},
  {0xae2, 0xae5}, {0xaf0, 0xaf8}, {0xafa, 0xb04}, {0xb0d, 0xb0e}, {0xb11, 0xb12}, {0xb29, 0xb29}, {0xb31, 0xb31}, {0xb34, 0xb34},
  {0xb3a, 0xb3c}, {0xb3e, 0xb5b}, {0xb5e, 0xb5e}, {0xb62, 0xb65}, {0xb70, 0xb70}, {0xb72, 0xb82}, {0xb84, 0xb84}, {0xb8b, 0xb8d},
  {0xb91, 0xb91}, {0xb96, 0xb98}, {0xb9b, 0xb9b}, {0xb9d, 0xb9d}, {0xba0, 0xba2}, {0xba5, 0xba7}, {0xbab, 0xbad}, {0xbba, 0xbcf},
  {0xbd1, 0xbe5}, {0xbf0, 0xc04}, {0xc0d, 0xc0d}, {0xc11, 0xc11}, {0xc29, 0xc29}, {0xc3a, 0xc3c}, {0xc3e, 0xc57}, {0xc5b, 0xc5c},
  {0xc5e, 0xc5f}, {0xc62, 0xc65}, {0xc70, 0xc7f}, {0xc81, 0xc84}, {0xc8d, 0xc8d}, {0xc91, 0xc91}, {0xca9, 0xca9}, {0xcb4, 0xcb4},
  {0xcba, 0xcbc}, {0xcbe, 0xcdc}, {0xcdf, 0xcdf}, {0xce2, 0xce5}, {0xcf0, 0xcf0}, {0xcf3, 0xd03}, {0xd0d, 0xd0d}, {0xd11, 0xd11},
  {0xd3b, 0xd3c}, {0xd3e, 0xd4d}, {0xd4f, 0xd53}, {0xd57, 0xd5e}, {0xd62, 0xd65}, {0xd70, 0xd79}, {0xd80, 0xd84}, {0xd97, 0xd99},
  {0xdb2, 0xdb2}, {0xdbc, 0xdbc}, {0xdbe, 0xdbf}, {0xdc7, 0xde5}, {0xdf0, 0xe00}, {0xe31, 0xe31}, {0xe34, 0xe3f}, {0xe47, 0xe4f},
  {0xe5a, 0xe80}, {0xe83, 0xe83}, {0xe85, 0xe85}, {0xe8b, 0xe8b}, {0xea4, 0xea4}, {0xea6, 0xea6}, {0xeb1, 0xeb1}, {0xeb4, 0xebc},
  {0xebe, 0xebf}, {0xec5, 0xec5}, {0xec7, 0xecf}, {0xeda, 0xedb}, {0xee0, 0xeff}, {0xf01, 0xf1f}, {0xf2a, 0xf3f}, {0xf48, 0xf48},
  {0xf6d, 0xf87}, {0xf8d, 0xfff}, {0x102b, 0x103e}, {0x104a, 0x104f}, {0x1056, 0x1059}, {0x105e, 0x1060}, {0x1062, 0x1064}, {0x1067, 0x106d},
  {0x1071, 0x1074}, {0x1082, 0x108d}, {0x108f, 0x108f}, {0x109a, 0x109f}, {0x10c6, 0x10c6}, {0x10c8, 0x10cc}, {0x10ce, 0x10cf}, {0x10fb, 0x10fb},
  {0x1249, 0x1249}, {0x124e, 0x124f}, {0x1257, 0x1257}, {0x1259, 0x1259}, {0x125e, 0x125f}, {0x1289, 0x1289}, {0x128e, 0x128f}, {0x12b1, 0x12b1},
  {0x12b6, 0x12b7}, {0x12bf, 0x12bf}, {0x12c1, 0x12c1}, {0x12c6, 0x12c7}, {0x12d7, 0x12d7}, {0x1311, 0x1311}, {0x1316, 0x1317}, {0x135b, 0x137f},
  {0x1390, 0x139f}, {0x13f6, 0x13f7}, {0x13fe, 0x1400}, {0x166d, 0x166e}, {0x1680, 0x1680}, {0x169b, 0x169f}, {0x16eb, 0x16f0}, {0x16f9, 0x16ff},
  {0x1712, 0x171e}, {0x1732, 0x173f}, {0x1752, 0x175f}, {0x176d, 0x176d}, {0x1771, 0x177f}, {0x17b4, 0x17d6}, {0x17d8, 0x17db}, {0x17dd, 0x17df},
  {0x17ea, 0x180f}, {0x181a, 0x181f}, {0x1879, 0x187f}, {0x1885, 0x1886}, {0x18a9, 0x18a9}, {0x18ab, 0x18af}, {0x18f6, 0x18ff}, {0x191f, 0x1945},
  {0x196e, 0x196f}, {0x1975, 0x197f}, {0x19ac, 0x19af}, {0x19ca, 0x19cf}, {0x19da, 0x19ff}, {0x1a17, 0x1a1f}, {0x1a55, 0x1a7f}, {0x1a8a, 0x1a8f},
  {0x1a9a, 0x1aa6}, {0x1aa8, 0x1b04}, {0x1b34, 0x1b44}, {0x1b4d, 0x1b4f}, {0x1b5a, 0x1b82}, {0x1ba1, 0x1bad}, {0x1be6, 0x1bff}, {0x1c24, 0x1c3f},
  {0x1c4a, 0x1c4c}, {0x1c7e, 0x1c7f}, {0x1c89, 0x1c8f}, {0x1cbb, 0x1cbc}, {0x1cc0, 0x1ce8}, {0x1ced, 0x1ced}, {0x1cf4, 0x1cf4}, {0x1cf7, 0x1cf9},
  {0x1cfb, 0x1cff}, {0x1dc0, 0x1dff}, {0x1f16, 0x1f17}, {0x1f1e, 0x1f1f}, {0x1f46, 0x1f47}, {0x1f4e, 0x1f4f}, {0x1f58, 0x1f58}, {0x1f5a, 0x1f5a},
  {0x1f5c, 0x1f5c}, {0x1f5e, 0x1f5e}, {0x1f7e, 0x1f7f}, {0x1fb5, 0x1fb5}, {0x1fbd, 0x1fbd}, {0x1fbf, 0x1fc1}, {0x1fc5, 0x1fc5}, {0x1fcd, 0x1fcf},
  {0x1fd4, 0x1fd5}, {0x1fdc, 0x1fdf}, {0x1fed, 0x1ff1}, {0x1ff5, 0x1ff5}, {0x1ffd, 0x2070}, {0x2072, 0x207e}, {0x2080, 0x208f}, {0x209d, 0x2101},
  {0x2103, 0x2106}, {0x2108, 0x2109}, {0x2114, 0x2114}, {0x2116, 0x2118}, {0x211e, 0x2123}, {0x2125, 0x2125}, {0x2127, 0x2127}, {0x2129, 0x2129},
  {0x212e, 0x212e}, {0x213a, 0x213b}, {0x2140, 0x2144}, {0x214a, 0x214d}, {0x214f, 0x2182}, {0x2185, 0x2bff}, {0x2ce5, 0x2cea}, {0x2cef, 0x2cf1},
  {0x2cf4, 0x2cff}, {0x2d26, 0x2d26}, {0x2d28, 0x2d2c}, {0x2d2e, 0x2d2f}, {0x2d68, 0x2d6e}, {0x2d70, 0x2d7f}, {0x2d97, 0x2d9f}, {0x2da7, 0x2da7},
  {0x2daf, 0x2daf}, {0x2db7, 0x2db7}, {0x2dbf, 0x2dbf}, {0x2dc7, 0x2dc7}, {0x2dcf, 0x2dcf}, {0x2dd7, 0x2dd7}, {0x2ddf, 0x2e2e}, {0x2e30, 0x3004},
  {0x3007, 0x3030}, {0x3036, 0x303a}, {0x303d, 0x3040}, {0x3097, 0x309c}, {0x30a0, 0x30a0}, {0x30fb, 0x30fb}, {0x3100, 0x3104}, {0x3130, 0x3130},
  {0x318f, 0x319f}, {0x31c0, 0x31ef}, {0x3200, 0x33ff}, {0x3401, 0x4dbe}, {0x4dc0, 0x4dff}, {0x4e01, 0x9ffe}, {0xa48d, 0xa4cf}, {0xa4fe, 0xa4ff},
  {0xa60d, 0xa60f}, {0xa62c, 0xa63f}, {0xa66f, 0xa67e}, {0xa69e, 0xa69f}, {0xa6e6, 0xa716}, {0xa720, 0xa721}, {0xa789, 0xa78a}, {0xa7cb, 0xa7cf},
  {0xa7d2, 0xa7d2}, {0xa7d4, 0xa7d4}, {0xa7da, 0xa7f1}, {0xa802, 0xa802}, {0xa806, 0xa806}, {0xa80b, 0xa80b}, {0xa823, 0xa83f}, {0xa874, 0xa881},
  {0xa8b4, 0xa8cf}, {0xa8da, 0xa8f1}, {0xa8f8, 0xa8fa}, {0xa8fc, 0xa8fc}, {0xa8ff, 0xa8ff}, {0xa926, 0xa92f}, {0xa947, 0xa95f}, {0xa97d, 0xa983},
  {0xa9b3, 0xa9ce}, {0xa9da, 0xa9df}, {0xa9e5, 0xa9e5}, {0xa9ff, 0xa9ff}, {0xaa29, 0xaa3f}, {0xaa43, 0xaa43}, {0xaa4c, 0xaa4f}, {0xaa5a, 0xaa5f},
  {0xaa77, 0xaa79}, {0xaa7b, 0xaa7d}, {0xaab0, 0xaab0}, {0xaab2, 0xaab4}, {0xaab7, 0xaab8}, {0xaabe, 0xaabf}, {0xaac1, 0xaac1}, {0xaac3, 0xaada},
  {0xaade, 0xaadf}, {0xaaeb, 0xaaf1}, {0xaaf5, 0xab00}, {0xab07, 0xab08}, {0xab0f, 0xab10}, {0xab17, 0xab1f}, {0xab27, 0xab27}, {0xab2f, 0xab2f},
  {0xab5b, 0xab5b}, {0xab6a, 0xab6f}, {0xabe3, 0xabef}, {0xabfa, 0xabff}, {0xac01, 0xd7a2}, {0xd7a4, 0xd7af}, {0xd7c7, 0xd7ca}, {0xd7fc, 0xf8ff},
  {0xfa6e, 0xfa6f}, {0xfada, 0xfaff}, {0xfb07, 0xfb12}, {0xfb18, 0xfb1c}, {0xfb1e, 0xfb1e}, {0xfb29, 0xfb29}, {0xfb37, 0xfb37}, {0xfb3d, 0xfb3d},
  {0xfb3f, 0xfb3f}, {0xfb42, 0xfb42}, {0xfb45, 0xfb45}, {0xfbb2, 0xfbd2}, {0xfd3e, 0xfd4f}, {0xfd90, 0xfd91}, {0xfdc8, 0xfdef}, {0xfdfc, 0xfe6f},
  {0xfe75, 0xfe75}, {0xfefd, 0xff0f}, {0xff1a, 0xff20}, {0xff3b, 0xff40}, {0xff5b, 0xff65}, {0xffbf, 0xffc1}, {0xffc8, 0xffc9}, {0xffd0, 0xffd1},
  {0xffd8, 0xffd9}, {0xffdd, 0xffff}, {0x1000c, 0x1000c}, {0x10027, 0x10027}, {0x1003b, 0x1003b}, {0x1003e, 0x1003e}, {0x1004e, 0x1004f}, {0x1005e, 0x1007f},
  {0x100fb, 0x1027f}, {0x1029d, 0x1029f}, {0x102d1, 0x102ff}, {0x10320, 0x1032c}, {0x10341, 0x10341}, {0x1034a, 0x1034f}, {0x10376, 0x1037f}, {0x1039e, 0x1039f},
  {0x103c4, 0x103c7}, {0x103d0, 0x103ff}, {0x1049e, 0x1049f}, {0x104aa, 0x104af}, {0x104d4, 0x104d7}, {0x104fc, 0x104ff}, {0x10528, 0x1052f}, {0x10564, 0x1056f},
  {0x1057b, 0x1057b}, {0x1058b, 0x1058b}, {0x10593, 0x10593}, {0x10596, 0x10596}, {0x105a2, 0x105a2}, {0x105b2, 0x105b2}, {0x105ba, 0x105ba}, {0x105bd, 0x105ff},
  {0x10737, 0x1073f}, {0x10756, 0x1075f}, {0x10768, 0x1077f}, {0x10786, 0x10786}, {0x107b1, 0x107b1}, {0x107bb, 0x107ff}, {0x10806, 0x10807}, {0x10809, 0x10809},
  {0x10836, 0x10836}, {0x10839, 0x1083b}, {0x1083d, 0x1083e}, {0x10856, 0x1085f}, {0x10877, 0x1087f}, {0x1089f, 0x108df}, {0x108f3, 0x108f3}, {0x108f6, 0x108ff},
  {0x10916, 0x1091f}, {0x1092c, 0x10ffff},
};

static TSCharacterRange sym__no_more_character_set_1[] = {
  {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb5, 0xb5}, {0xba, 0xba}, {0xc0, 0xd6},
  {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee}, {0x370, 0x374}, {0x376, 0x377},
  {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1}, {0x3a3, 0x3f5}, {0x3f7, 0x481},
  {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2}, {0x620, 0x64a}, {0x660, 0x669},
  {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc}, {0x6ff, 0x6ff}, {0x710, 0x710}, {0x712, 0x72f},
  {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815}, {0x81a, 0x81a}, {0x824, 0x824},
  {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9}, {0x904, 0x939}, {0x93d, 0x93d},
  {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990}, {0x993, 0x9a8}, {0x9aa, 0x9b0},
  {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1}, {0x9e6, 0x9f1}, {0x9fc, 0x9fc},
  {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33}, {0xa35, 0xa36}, {0xa38, 0xa39}, {0xa59, 0xa5c},
  {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8}, {0xaaa, 0xab0}, {0xab2, 0xab3},
  {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef}, {0xaf9, 0xaf9}, {0xb05, 0xb0c}, {0xb0f, 0xb10},
  {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d}, {0xb5c, 0xb5d}, {0xb5f, 0xb61}, {0xb66, 0xb6f},
  {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95}, {0xb99, 0xb9a}, {0xb9c, 0xb9c}, {0xb9e, 0xb9f},
  {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbef}, {0xc05, 0xc0c}, {0xc0e, 0xc10}, {0xc12, 0xc28},
  {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61}, {0xc66, 0xc6f}, {0xc80, 0xc80}, {0xc85, 0xc8c},
  {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd}, {0xcdd, 0xcde}, {0xce0, 0xce1}, {0xce6, 0xcef},
  {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d}, {0xd4e, 0xd4e}, {0xd54, 0xd56}, {0xd5f, 0xd61},
  {0xd66, 0xd6f}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd}, {0xdc0, 0xdc6}, {0xde6, 0xdef},
  {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59}, {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a}, {0xe8c, 0xea3},
  {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd}, {0xec0, 0xec4}, {0xec6, 0xec6}, {0xed0, 0xed9}, {0xedc, 0xedf},
  {0xf00, 0xf00}, {0xf20, 0xf29}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c}, {0x1000, 0x102a}, {0x103f, 0x1049}, {0x1050, 0x1055},
  {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081}, {0x108e, 0x108e}, {0x1090, 0x1099}, {0x10a0, 0x10c5},
  {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d}, {0x1250, 0x1256}, {0x1258, 0x1258}, {0x125a, 0x125d},
  {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be}, {0x12c0, 0x12c0}, {0x12c2, 0x12c5}, {0x12c8, 0x12d6},
  {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd}, {0x1401, 0x166c}, {0x166f, 0x167f},
  {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751}, {0x1760, 0x176c}, {0x176e, 0x1770},
  {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x17e0, 0x17e9}, {0x1810, 0x1819}, {0x1820, 0x1878}, {0x1880, 0x1884}, {0x1887, 0x18a8},
  {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9}, {0x19d0, 0x19d9},
  {0x1a00, 0x1a16}, {0x1a20, 0x1a54}, {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33}, {0x1b45, 0x1b4c}, {0x1b50, 0x1b59},
  {0x1b83, 0x1ba0}, {0x1bae, 0x1be5}, {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88}, {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf},
  {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15}, {0x1f18, 0x1f1d}, {0x1f20, 0x1f45},
  {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc},
  {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc},
  {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115}, {0x2119, 0x211d},
  {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149}, {0x214e, 0x214e},
  {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25}, {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67},
  {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6}, {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce},
  {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3006}, {0x3031, 0x3035}, {0x303b, 0x303c}, {0x3041, 0x3096}, {0x309d, 0x309f},
  {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3400, 0x3400}, {0x4dbf, 0x4dbf},
  {0x4e00, 0x4e00}, {0x9fff, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b}, {0xa640, 0xa66e}, {0xa67f, 0xa69d}, {0xa6a0, 0xa6e5},
  {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801}, {0xa803, 0xa805},
  {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9}, {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb}, {0xa8fd, 0xa8fe},
  {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9fe}, {0xaa00, 0xaa28},
  {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a}, {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1}, {0xaab5, 0xaab6},
  {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea}, {0xaaf2, 0xaaf4}, {0xab01, 0xab06}, {0xab09, 0xab0e},
  {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabe2}, {0xabf0, 0xabf9}, {0xac00, 0xac00},
  {0xd7a3, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17}, {0xfb1d, 0xfb1d},
  {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1}, {0xfbd3, 0xfd3d},
  {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19}, {0xff21, 0xff3a}, {0xff41, 0xff5a},
  {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b}, {0x1000d, 0x10026}, {0x10028, 0x1003a},
  {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c}, {0x102a0, 0x102d0}, {0x10300, 0x1031f}, {0x1032d, 0x10340},
  {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x10400, 0x1049d}, {0x104a0, 0x104a9}, {0x104b0, 0x104d3},
  {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595}, {0x10597, 0x105a1},
  {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785}, {0x10787, 0x107b0},
  {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855}, {0x10860, 0x10876},
  {0x10880, 0x1089e}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange sym__no_more_character_set_2[] = {
  {'\t', '\t'}, {' ', ' '}, {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb5, 0xb5},
  {0xba, 0xba}, {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee},
  {0x370, 0x374}, {0x376, 0x377}, {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1},
  {0x3a3, 0x3f5}, {0x3f7, 0x481}, {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2},
  {0x620, 0x64a}, {0x660, 0x669}, {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc}, {0x6ff, 0x6ff},
  {0x710, 0x710}, {0x712, 0x72f}, {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815},
  {0x81a, 0x81a}, {0x824, 0x824}, {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9},
  {0x904, 0x939}, {0x93d, 0x93d}, {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990},
  {0x993, 0x9a8}, {0x9aa, 0x9b0}, {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1},
  {0x9e6, 0x9f1}, {0x9fc, 0x9fc}, {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33}, {0xa35, 0xa36},
  {0xa38, 0xa39}, {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8},
  {0xaaa, 0xab0}, {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef}, {0xaf9, 0xaf9},
  {0xb05, 0xb0c}, {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d}, {0xb5c, 0xb5d},
  {0xb5f, 0xb61}, {0xb66, 0xb6f}, {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95}, {0xb99, 0xb9a},
  {0xb9c, 0xb9c}, {0xb9e, 0xb9f}, {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbef}, {0xc05, 0xc0c},
  {0xc0e, 0xc10}, {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61}, {0xc66, 0xc6f},
  {0xc80, 0xc80}, {0xc85, 0xc8c}, {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd}, {0xcdd, 0xcde},
  {0xce0, 0xce1}, {0xce6, 0xcef}, {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d}, {0xd4e, 0xd4e},
  {0xd54, 0xd56}, {0xd5f, 0xd61}, {0xd66, 0xd6f}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd},
  {0xdc0, 0xdc6}, {0xde6, 0xdef}, {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59}, {0xe81, 0xe82}, {0xe84, 0xe84},
  {0xe86, 0xe8a}, {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd}, {0xec0, 0xec4}, {0xec6, 0xec6},
  {0xed0, 0xed9}, {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf20, 0xf29}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c}, {0x1000, 0x102a},
  {0x103f, 0x1049}, {0x1050, 0x1055}, {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081}, {0x108e, 0x108e},
  {0x1090, 0x1099}, {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d}, {0x1250, 0x1256},
  {0x1258, 0x1258}, {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be}, {0x12c0, 0x12c0},
  {0x12c2, 0x12c5}, {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd},
  {0x1401, 0x166c}, {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751},
  {0x1760, 0x176c}, {0x176e, 0x1770}, {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x17e0, 0x17e9}, {0x1810, 0x1819}, {0x1820, 0x1878},
  {0x1880, 0x1884}, {0x1887, 0x18a8}, {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab},
  {0x19b0, 0x19c9}, {0x19d0, 0x19d9}, {0x1a00, 0x1a16}, {0x1a20, 0x1a54}, {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33},
  {0x1b45, 0x1b4c}, {0x1b50, 0x1b59}, {0x1b83, 0x1ba0}, {0x1bae, 0x1be5}, {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88},
  {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf}, {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15},
  {0x1f18, 0x1f1d}, {0x1f20, 0x1f45}, {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d},
  {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec},
  {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc}, {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113},
  {0x2115, 0x2115}, {0x2119, 0x211d}, {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f},
  {0x2145, 0x2149}, {0x214e, 0x214e}, {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25}, {0x2d27, 0x2d27},
  {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6}, {0x2db8, 0x2dbe},
  {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3006}, {0x3031, 0x3035}, {0x303b, 0x303c},
  {0x3041, 0x3096}, {0x309d, 0x309f}, {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff},
  {0x3400, 0x3400}, {0x4dbf, 0x4dbf}, {0x4e00, 0x4e00}, {0x9fff, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b}, {0xa640, 0xa66e},
  {0xa67f, 0xa69d}, {0xa6a0, 0xa6e5}, {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9},
  {0xa7f2, 0xa801}, {0xa803, 0xa805}, {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9}, {0xa8f2, 0xa8f7},
  {0xa8fb, 0xa8fb}, {0xa8fd, 0xa8fe}, {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9e4},
  {0xa9e6, 0xa9fe}, {0xaa00, 0xaa28}, {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a}, {0xaa7e, 0xaaaf},
  {0xaab1, 0xaab1}, {0xaab5, 0xaab6}, {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea}, {0xaaf2, 0xaaf4},
  {0xab01, 0xab06}, {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabe2},
  {0xabf0, 0xabf9}, {0xac00, 0xac00}, {0xd7a3, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06},
  {0xfb13, 0xfb17}, {0xfb1d, 0xfb1d}, {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44},
  {0xfb46, 0xfbb1}, {0xfbd3, 0xfd3d}, {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19},
  {0xff21, 0xff3a}, {0xff41, 0xff5a}, {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b},
  {0x1000d, 0x10026}, {0x10028, 0x1003a}, {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c}, {0x102a0, 0x102d0},
  {0x10300, 0x1031f}, {0x1032d, 0x10340}, {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x10400, 0x1049d},
  {0x104a0, 0x104a9}, {0x104b0, 0x104d3}, {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592},
  {0x10594, 0x10595}, {0x10597, 0x105a1}, {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767},
  {0x10780, 0x10785}, {0x10787, 0x107b0}, {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c},
  {0x1083f, 0x10855}, {0x10860, 0x10876}, {0x10880, 0x1089e}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange aux_sym__other_token1_character_set_1[] = {
  {'.', '.'}, {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb5, 0xb5}, {0xba, 0xba},
  {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee}, {0x370, 0x374},
  {0x376, 0x377}, {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1}, {0x3a3, 0x3f5},
  {0x3f7, 0x481}, {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2}, {0x620, 0x64a},
  {0x660, 0x669}, {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc}, {0x6ff, 0x6ff}, {0x710, 0x710},
  {0x712, 0x72f}, {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815}, {0x81a, 0x81a},
  {0x824, 0x824}, {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9}, {0x904, 0x939},
  {0x93d, 0x93d}, {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990}, {0x993, 0x9a8},
  {0x9aa, 0x9b0}, {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1}, {0x9e6, 0x9f1},
  {0x9fc, 0x9fc}, {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33}, {0xa35, 0xa36}, {0xa38, 0xa39},
  {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8}, {0xaaa, 0xab0},
  {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef}, {0xaf9, 0xaf9}, {0xb05, 0xb0c},
  {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d}, {0xb5c, 0xb5d}, {0xb5f, 0xb61},
  {0xb66, 0xb6f}, {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95}, {0xb99, 0xb9a}, {0xb9c, 0xb9c},
  {0xb9e, 0xb9f}, {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbef}, {0xc05, 0xc0c}, {0xc0e, 0xc10},
  {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61}, {0xc66, 0xc6f}, {0xc80, 0xc80},
  {0xc85, 0xc8c}, {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd}, {0xcdd, 0xcde}, {0xce0, 0xce1},
  {0xce6, 0xcef}, {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d}, {0xd4e, 0xd4e}, {0xd54, 0xd56},
  {0xd5f, 0xd61}, {0xd66, 0xd6f}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd}, {0xdc0, 0xdc6},
  {0xde6, 0xdef}, {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59}, {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a},
  {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd}, {0xec0, 0xec4}, {0xec6, 0xec6}, {0xed0, 0xed9},
  {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf20, 0xf29}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c}, {0x1000, 0x102a}, {0x103f, 0x1049},
  {0x1050, 0x1055}, {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081}, {0x108e, 0x108e}, {0x1090, 0x1099},
  {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d}, {0x1250, 0x1256}, {0x1258, 0x1258},
  {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be}, {0x12c0, 0x12c0}, {0x12c2, 0x12c5},
  {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd}, {0x1401, 0x166c},
  {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751}, {0x1760, 0x176c},
  {0x176e, 0x1770}, {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x17e0, 0x17e9}, {0x1810, 0x1819}, {0x1820, 0x1878}, {0x1880, 0x1884},
  {0x1887, 0x18a8}, {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9},
  {0x19d0, 0x19d9}, {0x1a00, 0x1a16}, {0x1a20, 0x1a54}, {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33}, {0x1b45, 0x1b4c},
  {0x1b50, 0x1b59}, {0x1b83, 0x1ba0}, {0x1bae, 0x1be5}, {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88}, {0x1c90, 0x1cba},
  {0x1cbd, 0x1cbf}, {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15}, {0x1f18, 0x1f1d},
  {0x1f20, 0x1f45}, {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4},
  {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4},
  {0x1ff6, 0x1ffc}, {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115},
  {0x2119, 0x211d}, {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149},
  {0x214e, 0x214e}, {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25}, {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d},
  {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6}, {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6},
  {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3006}, {0x3031, 0x3035}, {0x303b, 0x303c}, {0x3041, 0x3096},
  {0x309d, 0x309f}, {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3400, 0x3400},
  {0x4dbf, 0x4dbf}, {0x4e00, 0x4e00}, {0x9fff, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b}, {0xa640, 0xa66e}, {0xa67f, 0xa69d},
  {0xa6a0, 0xa6e5}, {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801},
  {0xa803, 0xa805}, {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9}, {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb},
  {0xa8fd, 0xa8fe}, {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9fe},
  {0xaa00, 0xaa28}, {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a}, {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1},
  {0xaab5, 0xaab6}, {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea}, {0xaaf2, 0xaaf4}, {0xab01, 0xab06},
  {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabe2}, {0xabf0, 0xabf9},
  {0xac00, 0xac00}, {0xd7a3, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17},
  {0xfb1d, 0xfb1d}, {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1},
  {0xfbd3, 0xfd3d}, {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19}, {0xff21, 0xff3a},
  {0xff41, 0xff5a}, {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b}, {0x1000d, 0x10026},
  {0x10028, 0x1003a}, {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c}, {0x102a0, 0x102d0}, {0x10300, 0x1031f},
  {0x1032d, 0x10340}, {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x10400, 0x1049d}, {0x104a0, 0x104a9},
  {0x104b0, 0x104d3}, {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595},
  {0x10597, 0x105a1}, {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785},
  {0x10787, 0x107b0}, {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855},
  {0x10860, 0x10876}, {0x10880, 0x1089e}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange aux_sym__other_token1_character_set_2[] = {
  {'\'', '\''}, {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb5, 0xb5}, {0xba, 0xba},
  {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee}, {0x370, 0x374},
  {0x376, 0x377}, {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1}, {0x3a3, 0x3f5},
  {0x3f7, 0x481}, {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2}, {0x620, 0x64a},
  {0x660, 0x669}, {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc}, {0x6ff, 0x6ff}, {0x710, 0x710},
  {0x712, 0x72f}, {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815}, {0x81a, 0x81a},
  {0x824, 0x824}, {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9}, {0x904, 0x939},
  {0x93d, 0x93d}, {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990}, {0x993, 0x9a8},
  {0x9aa, 0x9b0}, {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1}, {0x9e6, 0x9f1},
  {0x9fc, 0x9fc}, {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33}, {0xa35, 0xa36}, {0xa38, 0xa39},
  {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8}, {0xaaa, 0xab0},
  {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef}, {0xaf9, 0xaf9}, {0xb05, 0xb0c},
  {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d}, {0xb5c, 0xb5d}, {0xb5f, 0xb61},
  {0xb66, 0xb6f}, {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95}, {0xb99, 0xb9a}, {0xb9c, 0xb9c},
  {0xb9e, 0xb9f}, {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbef}, {0xc05, 0xc0c}, {0xc0e, 0xc10},
  {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61}, {0xc66, 0xc6f}, {0xc80, 0xc80},
  {0xc85, 0xc8c}, {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd}, {0xcdd, 0xcde}, {0xce0, 0xce1},
  {0xce6, 0xcef}, {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d}, {0xd4e, 0xd4e}, {0xd54, 0xd56},
  {0xd5f, 0xd61}, {0xd66, 0xd6f}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd}, {0xdc0, 0xdc6},
  {0xde6, 0xdef}, {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59}, {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a},
  {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd}, {0xec0, 0xec4}, {0xec6, 0xec6}, {0xed0, 0xed9},
  {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf20, 0xf29}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c}, {0x1000, 0x102a}, {0x103f, 0x1049},
  {0x1050, 0x1055}, {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081}, {0x108e, 0x108e}, {0x1090, 0x1099},
  {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d}, {0x1250, 0x1256}, {0x1258, 0x1258},
  {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be}, {0x12c0, 0x12c0}, {0x12c2, 0x12c5},
  {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd}, {0x1401, 0x166c},
  {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751}, {0x1760, 0x176c},
  {0x176e, 0x1770}, {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x17e0, 0x17e9}, {0x1810, 0x1819}, {0x1820, 0x1878}, {0x1880, 0x1884},
  {0x1887, 0x18a8}, {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9},
  {0x19d0, 0x19d9}, {0x1a00, 0x1a16}, {0x1a20, 0x1a54}, {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33}, {0x1b45, 0x1b4c},
  {0x1b50, 0x1b59}, {0x1b83, 0x1ba0}, {0x1bae, 0x1be5}, {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88}, {0x1c90, 0x1cba},
  {0x1cbd, 0x1cbf}, {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15}, {0x1f18, 0x1f1d},
  {0x1f20, 0x1f45}, {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4},
  {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4},
  {0x1ff6, 0x1ffc}, {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115},
  {0x2119, 0x211d}, {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149},
  {0x214e, 0x214e}, {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25}, {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d},
  {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6}, {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6},
  {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3006}, {0x3031, 0x3035}, {0x303b, 0x303c}, {0x3041, 0x3096},
  {0x309d, 0x309f}, {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3400, 0x3400},
  {0x4dbf, 0x4dbf}, {0x4e00, 0x4e00}, {0x9fff, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b}, {0xa640, 0xa66e}, {0xa67f, 0xa69d},
  {0xa6a0, 0xa6e5}, {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801},
  {0xa803, 0xa805}, {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9}, {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb},
  {0xa8fd, 0xa8fe}, {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9fe},
  {0xaa00, 0xaa28}, {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a}, {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1},
  {0xaab5, 0xaab6}, {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea}, {0xaaf2, 0xaaf4}, {0xab01, 0xab06},
  {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabe2}, {0xabf0, 0xabf9},
  {0xac00, 0xac00}, {0xd7a3, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17},
  {0xfb1d, 0xfb1d}, {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1},
  {0xfbd3, 0xfd3d}, {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19}, {0xff21, 0xff3a},
  {0xff41, 0xff5a}, {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b}, {0x1000d, 0x10026},
  {0x10028, 0x1003a}, {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c}, {0x102a0, 0x102d0}, {0x10300, 0x1031f},
  {0x1032d, 0x10340}, {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x10400, 0x1049d}, {0x104a0, 0x104a9},
  {0x104b0, 0x104d3}, {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595},
  {0x10597, 0x105a1}, {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785},
  {0x10787, 0x107b0}, {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855},
  {0x10860, 0x10876}, {0x10880, 0x1089e}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange aux_sym__other_token1_character_set_4[] = {
  {'\t', '\t'}, {' ', ' '}, {'-', '-'}, {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa},
  {0xb5, 0xb5}, {0xba, 0xba}, {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec},
  {0x2ee, 0x2ee}, {0x370, 0x374}, {0x376, 0x377}, {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c},
  {0x38e, 0x3a1}, {0x3a3, 0x3f5}, {0x3f7, 0x481}, {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea},
  {0x5ef, 0x5f2}, {0x620, 0x64a}, {0x660, 0x669}, {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc},
  {0x6ff, 0x6ff}, {0x710, 0x710}, {0x712, 0x72f}, {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa},
  {0x800, 0x815}, {0x81a, 0x81a}, {0x824, 0x824}, {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e},
  {0x8a0, 0x8c9}, {0x904, 0x939}, {0x93d, 0x93d}, {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c},
  {0x98f, 0x990}, {0x993, 0x9a8}, {0x9aa, 0x9b0}, {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd},
  {0x9df, 0x9e1}, {0x9e6, 0x9f1}, {0x9fc, 0x9fc}, {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33},
  {0xa35, 0xa36}, {0xa38, 0xa39}, {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91},
  {0xa93, 0xaa8}, {0xaaa, 0xab0}, {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef},
  {0xaf9, 0xaf9}, {0xb05, 0xb0c}, {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d},
  {0xb5c, 0xb5d}, {0xb5f, 0xb61}, {0xb66, 0xb6f}, {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95},
  {0xb99, 0xb9a}, {0xb9c, 0xb9c}, {0xb9e, 0xb9f}, {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbef},
  {0xc05, 0xc0c}, {0xc0e, 0xc10}, {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61},
  {0xc66, 0xc6f}, {0xc80, 0xc80}, {0xc85, 0xc8c}, {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd},
  {0xcdd, 0xcde}, {0xce0, 0xce1}, {0xce6, 0xcef}, {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d},
  {0xd4e, 0xd4e}, {0xd54, 0xd56}, {0xd5f, 0xd61}, {0xd66, 0xd6f}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb},
  {0xdbd, 0xdbd}, {0xdc0, 0xdc6}, {0xde6, 0xdef}, {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59}, {0xe81, 0xe82},
  {0xe84, 0xe84}, {0xe86, 0xe8a}, {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd}, {0xec0, 0xec4},
  {0xec6, 0xec6}, {0xed0, 0xed9}, {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf20, 0xf29}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c},
  {0x1000, 0x102a}, {0x103f, 0x1049}, {0x1050, 0x1055}, {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081},
  {0x108e, 0x108e}, {0x1090, 0x1099}, {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d},
  {0x1250, 0x1256}, {0x1258, 0x1258}, {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be},
  {0x12c0, 0x12c0}, {0x12c2, 0x12c5}, {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5},
  {0x13f8, 0x13fd}, {0x1401, 0x166c}, {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731},
  {0x1740, 0x1751}, {0x1760, 0x176c}, {0x176e, 0x1770}, {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x17e0, 0x17e9}, {0x1810, 0x1819},
  {0x1820, 0x1878}, {0x1880, 0x1884}, {0x1887, 0x18a8}, {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974},
  {0x1980, 0x19ab}, {0x19b0, 0x19c9}, {0x19d0, 0x19d9}, {0x1a00, 0x1a16}, {0x1a20, 0x1a54}, {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7},
  {0x1b05, 0x1b33}, {0x1b45, 0x1b4c}, {0x1b50, 0x1b59}, {0x1b83, 0x1ba0}, {0x1bae, 0x1be5}, {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d},
  {0x1c80, 0x1c88}, {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf}, {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf},
  {0x1e00, 0x1f15}, {0x1f18, 0x1f1d}, {0x1f20, 0x1f45}, {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d},
  {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb},
  {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc}, {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107},
  {0x210a, 0x2113}, {0x2115, 0x2115}, {0x2119, 0x211d}, {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139},
  {0x213c, 0x213f}, {0x2145, 0x2149}, {0x214e, 0x214e}, {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25},
  {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6},
  {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3006}, {0x3031, 0x3035},
  {0x303b, 0x303c}, {0x3041, 0x3096}, {0x309d, 0x309f}, {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x31a0, 0x31bf},
  {0x31f0, 0x31ff}, {0x3400, 0x3400}, {0x4dbf, 0x4dbf}, {0x4e00, 0x4e00}, {0x9fff, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b},
  {0xa640, 0xa66e}, {0xa67f, 0xa69d}, {0xa6a0, 0xa6e5}, {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3},
  {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801}, {0xa803, 0xa805}, {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9},
  {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb}, {0xa8fd, 0xa8fe}, {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9},
  {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9fe}, {0xaa00, 0xaa28}, {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a},
  {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1}, {0xaab5, 0xaab6}, {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea},
  {0xaaf2, 0xaaf4}, {0xab01, 0xab06}, {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69},
  {0xab70, 0xabe2}, {0xabf0, 0xabf9}, {0xac00, 0xac00}, {0xd7a3, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9},
  {0xfb00, 0xfb06}, {0xfb13, 0xfb17}, {0xfb1d, 0xfb1d}, {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41},
  {0xfb43, 0xfb44}, {0xfb46, 0xfbb1}, {0xfbd3, 0xfd3d}, {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc},
  {0xff10, 0xff19}, {0xff21, 0xff3a}, {0xff41, 0xff5a}, {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc},
  {0x10000, 0x1000b}, {0x1000d, 0x10026}, {0x10028, 0x1003a}, {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c},
  {0x102a0, 0x102d0}, {0x10300, 0x1031f}, {0x1032d, 0x10340}, {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf},
  {0x10400, 0x1049d}, {0x104a0, 0x104a9}, {0x104b0, 0x104d3}, {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a},
  {0x1058c, 0x10592}, {0x10594, 0x10595}, {0x10597, 0x105a1}, {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755},
  {0x10760, 0x10767}, {0x10780, 0x10785}, {0x10787, 0x107b0}, {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838},
  {0x1083c, 0x1083c}, {0x1083f, 0x10855}, {0x10860, 0x10876}, {0x10880, 0x1089e}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange aux_sym__other_token4_character_set_1[] = {
  {'/', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb5, 0xb5}, {0xba, 0xba}, {0xc0, 0xd6},
  {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee}, {0x370, 0x374}, {0x376, 0x377},
  {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1}, {0x3a3, 0x3f5}, {0x3f7, 0x481},
  {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2}, {0x620, 0x64a}, {0x660, 0x669},
  {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc}, {0x6ff, 0x6ff}, {0x710, 0x710}, {0x712, 0x72f},
  {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815}, {0x81a, 0x81a}, {0x824, 0x824},
  {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9}, {0x904, 0x939}, {0x93d, 0x93d},
  {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990}, {0x993, 0x9a8}, {0x9aa, 0x9b0},
  {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1}, {0x9e6, 0x9f1}, {0x9fc, 0x9fc},
  {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33}, {0xa35, 0xa36}, {0xa38, 0xa39}, {0xa59, 0xa5c},
  {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8}, {0xaaa, 0xab0}, {0xab2, 0xab3},
  {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef}, {0xaf9, 0xaf9}, {0xb05, 0xb0c}, {0xb0f, 0xb10},
  {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d}, {0xb5c, 0xb5d}, {0xb5f, 0xb61}, {0xb66, 0xb6f},
  {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95}, {0xb99, 0xb9a}, {0xb9c, 0xb9c}, {0xb9e, 0xb9f},
  {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbef}, {0xc05, 0xc0c}, {0xc0e, 0xc10}, {0xc12, 0xc28},
  {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61}, {0xc66, 0xc6f}, {0xc80, 0xc80}, {0xc85, 0xc8c},
  {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd}, {0xcdd, 0xcde}, {0xce0, 0xce1}, {0xce6, 0xcef},
  {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d}, {0xd4e, 0xd4e}, {0xd54, 0xd56}, {0xd5f, 0xd61},
  {0xd66, 0xd6f}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd}, {0xdc0, 0xdc6}, {0xde6, 0xdef},
  {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59}, {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a}, {0xe8c, 0xea3},
  {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd}, {0xec0, 0xec4}, {0xec6, 0xec6}, {0xed0, 0xed9}, {0xedc, 0xedf},
  {0xf00, 0xf00}, {0xf20, 0xf29}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c}, {0x1000, 0x102a}, {0x103f, 0x1049}, {0x1050, 0x1055},
  {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081}, {0x108e, 0x108e}, {0x1090, 0x1099}, {0x10a0, 0x10c5},
  {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d}, {0x1250, 0x1256}, {0x1258, 0x1258}, {0x125a, 0x125d},
  {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be}, {0x12c0, 0x12c0}, {0x12c2, 0x12c5}, {0x12c8, 0x12d6},
  {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd}, {0x1401, 0x166c}, {0x166f, 0x167f},
  {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751}, {0x1760, 0x176c}, {0x176e, 0x1770},
  {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x17e0, 0x17e9}, {0x1810, 0x1819}, {0x1820, 0x1878}, {0x1880, 0x1884}, {0x1887, 0x18a8},
  {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9}, {0x19d0, 0x19d9},
  {0x1a00, 0x1a16}, {0x1a20, 0x1a54}, {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33}, {0x1b45, 0x1b4c}, {0x1b50, 0x1b59},
  {0x1b83, 0x1ba0}, {0x1bae, 0x1be5}, {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88}, {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf},
  {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15}, {0x1f18, 0x1f1d}, {0x1f20, 0x1f45},
  {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc},
  {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc},
  {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115}, {0x2119, 0x211d},
  {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149}, {0x214e, 0x214e},
  {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25}, {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67},
  {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6}, {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce},
  {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3006}, {0x3031, 0x3035}, {0x303b, 0x303c}, {0x3041, 0x3096}, {0x309d, 0x309f},
  {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3400, 0x3400}, {0x4dbf, 0x4dbf},
  {0x4e00, 0x4e00}, {0x9fff, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b}, {0xa640, 0xa66e}, {0xa67f, 0xa69d}, {0xa6a0, 0xa6e5},
  {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801}, {0xa803, 0xa805},
  {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9}, {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb}, {0xa8fd, 0xa8fe},
  {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9fe}, {0xaa00, 0xaa28},
  {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a}, {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1}, {0xaab5, 0xaab6},
  {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea}, {0xaaf2, 0xaaf4}, {0xab01, 0xab06}, {0xab09, 0xab0e},
  {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabe2}, {0xabf0, 0xabf9}, {0xac00, 0xac00},
  {0xd7a3, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17}, {0xfb1d, 0xfb1d},
  {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1}, {0xfbd3, 0xfd3d},
  {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19}, {0xff21, 0xff3a}, {0xff41, 0xff5a},
  {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b}, {0x1000d, 0x10026}, {0x10028, 0x1003a},
  {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c}, {0x102a0, 0x102d0}, {0x10300, 0x1031f}, {0x1032d, 0x10340},
  {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x10400, 0x1049d}, {0x104a0, 0x104a9}, {0x104b0, 0x104d3},
  {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595}, {0x10597, 0x105a1},
  {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785}, {0x10787, 0x107b0},
  {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855}, {0x10860, 0x10876},
  {0x10880, 0x1089e}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange aux_sym__other_token5_character_set_1[] = {
  {0, 0x08}, {0x0e, 0x1f}, {'!', '\''}, {'+', '/'}, {':', '@'}, {'\\', '\\'}, {'^', '^'}, {'`', '`'},
  {'{', 0xa9}, {0xab, 0xb4}, {0xb6, 0xb9}, {0xbb, 0xbf}, {0xd7, 0xd7}, {0xf7, 0xf7}, {0x2c2, 0x2c5}, {0x2d2, 0x2df},
  {0x2e5, 0x2eb}, {0x2ed, 0x2ed}, {0x2ef, 0x36f}, {0x375, 0x375}, {0x378, 0x379}, {0x37e, 0x37e}, {0x380, 0x385}, {0x387, 0x387},
  {0x38b, 0x38b}, {0x38d, 0x38d}, {0x3a2, 0x3a2}, {0x3f6, 0x3f6}, {0x482, 0x489}, {0x530, 0x530}, {0x557, 0x558}, {0x55a, 0x55f},
  {0x589, 0x5cf}, {0x5eb, 0x5ee}, {0x5f3, 0x61f}, {0x64b, 0x65f}, {0x66a, 0x66d}, {0x670, 0x670}, {0x6d4, 0x6d4}, {0x6d6, 0x6e4},
  {0x6e7, 0x6ed}, {0x6fd, 0x6fe}, {0x700, 0x70f}, {0x711, 0x711}, {0x730, 0x74c}, {0x7a6, 0x7b0}, {0x7b2, 0x7bf}, {0x7eb, 0x7f3},
  {0x7f6, 0x7f9}, {0x7fb, 0x7ff}, {0x816, 0x819}, {0x81b, 0x823}, {0x825, 0x827}, {0x829, 0x83f}, {0x859, 0x85f}, {0x86b, 0x86f},
  {0x888, 0x888}, {0x88f, 0x89f}, {0x8ca, 0x903}, {0x93a, 0x93c}, {0x93e, 0x94f}, {0x951, 0x957}, {0x962, 0x965}, {0x970, 0x970},
  {0x981, 0x984}, {0x98d, 0x98e}, {0x991, 0x992}, {0x9a9, 0x9a9}, {0x9b1, 0x9b1}, {0x9b3, 0x9b5}, {0x9ba, 0x9bc}, {0x9be, 0x9cd},
  {0x9cf, 0x9db}, {0x9de, 0x9de}, {0x9e2, 0x9e5}, {0x9f2, 0x9fb}, {0x9fd, 0xa04}, {0xa0b, 0xa0e}, {0xa11, 0xa12}, {0xa29, 0xa29},
  {0xa31, 0xa31}, {0xa34, 0xa34}, {0xa37, 0xa37}, {0xa3a, 0xa58}, {0xa5d, 0xa5d}, {0xa5f, 0xa65}, {0xa70, 0xa71}, {0xa75, 0xa84},
  {0xa8e, 0xa8e}, {0xa92, 0xa92}, {0xaa9, 0xaa9}, {0xab1, 0xab1}, {0xab4, 0xab4}, {0xaba, 0xabc}, {0xabe, 0xacf}, {0xad1, 0xadf},
  {0xae2, 0xae5}, {0xaf0, 0xaf8}, {0xafa, 0xb04}, {0xb0d, 0xb0e}, {0xb11, 0xb12}, {0xb29, 0xb29}, {0xb31, 0xb31}, {0xb34, 0xb34},
  {0xb3a, 0xb3c}, {0xb3e, 0xb5b}, {0xb5e, 0xb5e}, {0xb62, 0xb65}, {0xb70, 0xb70}, {0xb72, 0xb82}, {0xb84, 0xb84}, {0xb8b, 0xb8d},
  {0xb91, 0xb91}, {0xb96, 0xb98}, {0xb9b, 0xb9b}, {0xb9d, 0xb9d}, {0xba0, 0xba2}, {0xba5, 0xba7}, {0xbab, 0xbad}, {0xbba, 0xbcf},
  {0xbd1, 0xbe5}, {0xbf0, 0xc04}, {0xc0d, 0xc0d}, {0xc11, 0xc11}, {0xc29, 0xc29}, {0xc3a, 0xc3c}, {0xc3e, 0xc57}, {0xc5b, 0xc5c},
  {0xc5e, 0xc5f}, {0xc62, 0xc65}, {0xc70, 0xc7f}, {0xc81, 0xc84}, {0xc8d, 0xc8d}, {0xc91, 0xc91}, {0xca9, 0xca9}, {0xcb4, 0xcb4},
  {0xcba, 0xcbc}, {0xcbe, 0xcdc}, {0xcdf, 0xcdf}, {0xce2, 0xce5}, {0xcf0, 0xcf0}, {0xcf3, 0xd03}, {0xd0d, 0xd0d}, {0xd11, 0xd11},
  {0xd3b, 0xd3c}, {0xd3e, 0xd4d}, {0xd4f, 0xd53}, {0xd57, 0xd5e}, {0xd62, 0xd65}, {0xd70, 0xd79}, {0xd80, 0xd84}, {0xd97, 0xd99},
  {0xdb2, 0xdb2}, {0xdbc, 0xdbc}, {0xdbe, 0xdbf}, {0xdc7, 0xde5}, {0xdf0, 0xe00}, {0xe31, 0xe31}, {0xe34, 0xe3f}, {0xe47, 0xe4f},
  {0xe5a, 0xe80}, {0xe83, 0xe83}, {0xe85, 0xe85}, {0xe8b, 0xe8b}, {0xea4, 0xea4}, {0xea6, 0xea6}, {0xeb1, 0xeb1}, {0xeb4, 0xebc},
  {0xebe, 0xebf}, {0xec5, 0xec5}, {0xec7, 0xecf}, {0xeda, 0xedb}, {0xee0, 0xeff}, {0xf01, 0xf1f}, {0xf2a, 0xf3f}, {0xf48, 0xf48},
  {0xf6d, 0xf87}, {0xf8d, 0xfff}, {0x102b, 0x103e}, {0x104a, 0x104f}, {0x1056, 0x1059}, {0x105e, 0x1060}, {0x1062, 0x1064}, {0x1067, 0x106d},
  {0x1071, 0x1074}, {0x1082, 0x108d}, {0x108f, 0x108f}, {0x109a, 0x109f}, {0x10c6, 0x10c6}, {0x10c8, 0x10cc}, {0x10ce, 0x10cf}, {0x10fb, 0x10fb},
  {0x1249, 0x1249}, {0x124e, 0x124f}, {0x1257, 0x1257}, {0x1259, 0x1259}, {0x125e, 0x125f}, {0x1289, 0x1289}, {0x128e, 0x128f}, {0x12b1, 0x12b1},
  {0x12b6, 0x12b7}, {0x12bf, 0x12bf}, {0x12c1, 0x12c1}, {0x12c6, 0x12c7}, {0x12d7, 0x12d7}, {0x1311, 0x1311}, {0x1316, 0x1317}, {0x135b, 0x137f},
  {0x1390, 0x139f}, {0x13f6, 0x13f7}, {0x13fe, 0x1400}, {0x166d, 0x166e}, {0x1680, 0x1680}, {0x169b, 0x169f}, {0x16eb, 0x16f0}, {0x16f9, 0x16ff},
  {0x1712, 0x171e}, {0x1732, 0x173f}, {0x1752, 0x175f}, {0x176d, 0x176d}, {0x1771, 0x177f}, {0x17b4, 0x17d6}, {0x17d8, 0x17db}, {0x17dd, 0x17df},
  {0x17ea, 0x180f}, {0x181a, 0x181f}, {0x1879, 0x187f}, {0x1885, 0x1886}, {0x18a9, 0x18a9}, {0x18ab, 0x18af}, {0x18f6, 0x18ff}, {0x191f, 0x1945},
  {0x196e, 0x196f}, {0x1975, 0x197f}, {0x19ac, 0x19af}, {0x19ca, 0x19cf}, {0x19da, 0x19ff}, {0x1a17, 0x1a1f}, {0x1a55, 0x1a7f}, {0x1a8a, 0x1a8f},
  {0x1a9a, 0x1aa6}, {0x1aa8, 0x1b04}, {0x1b34, 0x1b44}, {0x1b4d, 0x1b4f}, {0x1b5a, 0x1b82}, {0x1ba1, 0x1bad}, {0x1be6, 0x1bff}, {0x1c24, 0x1c3f},
  {0x1c4a, 0x1c4c}, {0x1c7e, 0x1c7f}, {0x1c89, 0x1c8f}, {0x1cbb, 0x1cbc}, {0x1cc0, 0x1ce8}, {0x1ced, 0x1ced}, {0x1cf4, 0x1cf4}, {0x1cf7, 0x1cf9},
  {0x1cfb, 0x1cff}, {0x1dc0, 0x1dff}, {0x1f16, 0x1f17}, {0x1f1e, 0x1f1f}, {0x1f46, 0x1f47}, {0x1f4e, 0x1f4f}, {0x1f58, 0x1f58}, {0x1f5a, 0x1f5a},
  {0x1f5c, 0x1f5c}, {0x1f5e, 0x1f5e}, {0x1f7e, 0x1f7f}, {0x1fb5, 0x1fb5}, {0x1fbd, 0x1fbd}, {0x1fbf, 0x1fc1}, {0x1fc5, 0x1fc5}, {0x1fcd, 0x1fcf},
  {0x1fd4, 0x1fd5}, {0x1fdc, 0x1fdf}, {0x1fed, 0x1ff1}, {0x1ff5, 0x1ff5}, {0x1ffd, 0x2070}, {0x2072, 0x207e}, {0x2080, 0x208f}, {0x209d, 0x2101},
  {0x2103, 0x2106}, {0x2108, 0x2109}, {0x2114, 0x2114}, {0x2116, 0x2118}, {0x211e, 0x2123}, {0x2125, 0x2125}, {0x2127, 0x2127}, {0x2129, 0x2129},
  {0x212e, 0x212e}, {0x213a, 0x213b}, {0x2140, 0x2144}, {0x214a, 0x214d}, {0x214f, 0x2182}, {0x2185, 0x2bff}, {0x2ce5, 0x2cea}, {0x2cef, 0x2cf1},
  {0x2cf4, 0x2cff}, {0x2d26, 0x2d26}, {0x2d28, 0x2d2c}, {0x2d2e, 0x2d2f}, {0x2d68, 0x2d6e}, {0x2d70, 0x2d7f}, {0x2d97, 0x2d9f}, {0x2da7, 0x2da7},
  {0x2daf, 0x2daf}, {0x2db7, 0x2db7}, {0x2dbf, 0x2dbf}, {0x2dc7, 0x2dc7}, {0x2dcf, 0x2dcf}, {0x2dd7, 0x2dd7}, {0x2ddf, 0x2e2e}, {0x2e30, 0x3004},
  {0x3007, 0x3030}, {0x3036, 0x303a}, {0x303d, 0x3040}, {0x3097, 0x309c}, {0x30a0, 0x30a0}, {0x30fb, 0x30fb}, {0x3100, 0x3104}, {0x3130, 0x3130},
  {0x318f, 0x319f}, {0x31c0, 0x31ef}, {0x3200, 0x33ff}, {0x3401, 0x4dbe}, {0x4dc0, 0x4dff}, {0x4e01, 0x9ffe}, {0xa48d, 0xa4cf}, {0xa4fe, 0xa4ff},
  {0xa60d, 0xa60f}, {0xa62c, 0xa63f}, {0xa66f, 0xa67e}, {0xa69e, 0xa69f}, {0xa6e6, 0xa716}, {0xa720, 0xa721}, {0xa789, 0xa78a}, {0xa7cb, 0xa7cf},
  {0xa7d2, 0xa7d2}, {0xa7d4, 0xa7d4}, {0xa7da, 0xa7f1}, {0xa802, 0xa802}, {0xa806, 0xa806}, {0xa80b, 0xa80b}, {0xa823, 0xa83f}, {0xa874, 0xa881},
  {0xa8b4, 0xa8cf}, {0xa8da, 0xa8f1}, {0xa8f8, 0xa8fa}, {0xa8fc, 0xa8fc}, {0xa8ff, 0xa8ff}, {0xa926, 0xa92f}, {0xa947, 0xa95f}, {0xa97d, 0xa983},
  {0xa9b3, 0xa9ce}, {0xa9da, 0xa9df}, {0xa9e5, 0xa9e5}, {0xa9ff, 0xa9ff}, {0xaa29, 0xaa3f}, {0xaa43, 0xaa43}, {0xaa4c, 0xaa4f}, {0xaa5a, 0xaa5f},
  {0xaa77, 0xaa79}, {0xaa7b, 0xaa7d}, {0xaab0, 0xaab0}, {0xaab2, 0xaab4}, {0xaab7, 0xaab8}, {0xaabe, 0xaabf}, {0xaac1, 0xaac1}, {0xaac3, 0xaada},
  {0xaade, 0xaadf}, {0xaaeb, 0xaaf1}, {0xaaf5, 0xab00}, {0xab07, 0xab08}, {0xab0f, 0xab10}, {0xab17, 0xab1f}, {0xab27, 0xab27}, {0xab2f, 0xab2f},
  {0xab5b, 0xab5b}, {0xab6a, 0xab6f}, {0xabe3, 0xabef}, {0xabfa, 0xabff}, {0xac01, 0xd7a2}, {0xd7a4, 0xd7af}, {0xd7c7, 0xd7ca}, {0xd7fc, 0xf8ff},
  {0xfa6e, 0xfa6f}, {0xfada, 0xfaff}, {0xfb07, 0xfb12}, {0xfb18, 0xfb1c}, {0xfb1e, 0xfb1e}, {0xfb29, 0xfb29}, {0xfb37, 0xfb37}, {0xfb3d, 0xfb3d},
  {0xfb3f, 0xfb3f}, {0xfb42, 0xfb42}, {0xfb45, 0xfb45}, {0xfbb2, 0xfbd2}, {0xfd3e, 0xfd4f}, {0xfd90, 0xfd91}, {0xfdc8, 0xfdef}, {0xfdfc, 0xfe6f},
  {0xfe75, 0xfe75}, {0xfefd, 0xff0f}, {0xff1a, 0xff20}, {0xff3b, 0xff40}, {0xff5b, 0xff65}, {0xffbf, 0xffc1}, {0xffc8, 0xffc9}, {0xffd0, 0xffd1},
  {0xffd8, 0xffd9}, {0xffdd, 0xffff}, {0x1000c, 0x1000c}, {0x10027, 0x10027}, {0x1003b, 0x1003b}, {0x1003e, 0x1003e}, {0x1004e, 0x1004f}, {0x1005e, 0x1007f},
  {0x100fb, 0x1027f}, {0x1029d, 0x1029f}, {0x102d1, 0x102ff}, {0x10320, 0x1032c}, {0x10341, 0x10341}, {0x1034a, 0x1034f}, {0x10376, 0x1037f}, {0x1039e, 0x1039f},
  {0x103c4, 0x103c7}, {0x103d0, 0x103ff}, {0x1049e, 0x1049f}, {0x104aa, 0x104af}, {0x104d4, 0x104d7}, {0x104fc, 0x104ff}, {0x10528, 0x1052f}, {0x10564, 0x1056f},
  {0x1057b, 0x1057b}, {0x1058b, 0x1058b}, {0x10593, 0x10593}, {0x10596, 0x10596}, {0x105a2, 0x105a2}, {0x105b2, 0x105b2}, {0x105ba, 0x105ba}, {0x105bd, 0x105ff},
  {0x10737, 0x1073f}, {0x10756, 0x1075f}, {0x10768, 0x1077f}, {0x10786, 0x10786}, {0x107b1, 0x107b1}, {0x107bb, 0x107ff}, {0x10806, 0x10807}, {0x10809, 0x10809},
  {0x10836, 0x10836}, {0x10839, 0x1083b}, {0x1083d, 0x1083e}, {0x10856, 0x1085f}, {0x10877, 0x1087f}, {0x1089f, 0x108df}, {0x108f3, 0x108f3}, {0x108f6, 0x108ff},
  {0x10916, 0x1091f}, {0x1092c, 0x10ffff},
};

static bool ts_lex(TSLexer *lexer, TSStateId state) {
  START_LEXER();
  eof = lexer->eof(lexer);
  switch (state) {
    case 0:
      if (eof) ADVANCE(746);
      ADVANCE_MAP(
        '\n', 747,
        '\r', 237,
        '(', 1020,
        '-', 1867,
        '/', 1866,
        '\t', 749,
        ' ', 749,
        'B', 1634,
        'b', 1634,
        'C', 918,
        'c', 918,
        'D', 912,
        'd', 912,
        'E', 1679,
        'e', 1679,
        'F', 1638,
        'f', 1638,
        'H', 1620,
        'h', 1620,
        'I', 1771,
        'i', 1771,
        'J', 1796,
        'j', 1796,
        'K', 1783,
        'k', 1783,
        'L', 1644,
        'l', 1644,
        'M', 1635,
        'm', 1635,
        'N', 1697,
        'n', 1697,
        'O', 1787,
        'o', 1787,
        'P', 1660,
        'p', 1660,
        'Q', 1832,
        'q', 1832,
        'R', 1625,
        'r', 1625,
        'S', 1621,
        's', 1621,
        'T', 1609,
        't', 1609,
        'V', 1617,
        'v', 1617,
        'W', 1708,
        'w', 1708,
        'X', 1861,
        'x', 1861,
        ')', 1019,
        '*', 1019,
        '[', 1019,
        ']', 1019,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1869);
      END_STATE();
    case 1:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'A', 37,
        'a', 37,
        'O', 784,
        'o', 784,
        'P', 221,
        'p', 221,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 2:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(48);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(133);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 3:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'A', 119,
        'a', 119,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'I', 198,
        'i', 198,
        'K', 166,
        'k', 166,
        'O', 157,
        'o', 157,
        'P', 220,
        'p', 220,
        'Q', 181,
        'q', 181,
        'R', 143,
        'r', 143,
        'S', 785,
        's', 785,
        'T', 32,
        't', 32,
        'U', 109,
        'u', 109,
        'W', 51,
        'w', 51,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 4:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'A', 119,
        'a', 119,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'I', 198,
        'i', 198,
        'K', 166,
        'k', 166,
        'O', 157,
        'o', 157,
        'P', 220,
        'p', 220,
        'Q', 181,
        'q', 181,
        'R', 148,
        'r', 148,
        'S', 785,
        's', 785,
        'T', 32,
        't', 32,
        'U', 109,
        'u', 109,
        'W', 51,
        'w', 51,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 5:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(22);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(40);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 6:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(58);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(134);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 7:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'A', 93,
        'a', 93,
        'D', 33,
        'd', 33,
        'E', 169,
        'e', 169,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'K', 166,
        'k', 166,
        'N', 49,
        'n', 49,
        'O', 197,
        'o', 197,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 166,
        'r', 166,
        'S', 785,
        's', 785,
        'T', 32,
        't', 32,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 8:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'A', 93,
        'a', 93,
        'D', 33,
        'd', 33,
        'E', 169,
        'e', 169,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 166,
        'r', 166,
        'S', 785,
        's', 785,
        'T', 32,
        't', 32,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 9:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(160);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 10:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(176);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 11:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(193);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 12:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(97);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 13:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'A', 41,
        'a', 41,
        'O', 784,
        'o', 784,
        'P', 221,
        'p', 221,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 14:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(117);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 15:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 761,
        'c', 761,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 8,
        'r', 8,
        'S', 210,
        's', 210,
        'T', 807,
        't', 807,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 16:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 761,
        'c', 761,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 760,
        'r', 760,
        'S', 210,
        's', 210,
        'T', 807,
        't', 807,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 17:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 8,
        'r', 8,
        'S', 210,
        's', 210,
        'T', 211,
        't', 211,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 18:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 8,
        'r', 8,
        'S', 209,
        's', 209,
        'T', 211,
        't', 211,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 19:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 7,
        'r', 7,
        'S', 210,
        's', 210,
        'T', 211,
        't', 211,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 20:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 36,
        'p', 36,
        'Q', 180,
        'q', 180,
        'R', 8,
        'r', 8,
        'S', 210,
        's', 210,
        'T', 211,
        't', 211,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 21:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 217,
        'd', 217,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 8,
        'r', 8,
        'S', 210,
        's', 210,
        'T', 233,
        't', 233,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 22:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(828);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 23:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(111);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 24:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(113);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 25:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(115);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 26:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 13,
        'b', 13,
        'C', 87,
        'c', 87,
        'D', 207,
        'd', 207,
        'E', 46,
        'e', 46,
        'F', 4,
        'f', 4,
        'H', 208,
        'h', 208,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 94,
        'n', 94,
        'P', 35,
        'p', 35,
        'Q', 180,
        'q', 180,
        'R', 8,
        'r', 8,
        'S', 210,
        's', 210,
        'T', 211,
        't', 211,
        'V', 212,
        'v', 212,
        'X', 224,
        'x', 224,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 27:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 763,
        'c', 763,
        'D', 213,
        'd', 213,
        'T', 762,
        't', 762,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 28:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 763,
        'c', 763,
        'R', 763,
        'r', 763,
        'T', 762,
        't', 762,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 29:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(763);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(762);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 30:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(806);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 31:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 788,
        'c', 788,
        'R', 786,
        'r', 786,
        'S', 164,
        's', 164,
        'T', 156,
        't', 156,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 32:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 788,
        'c', 788,
        'R', 786,
        'r', 786,
        'T', 156,
        't', 156,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 33:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(788);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(156);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 34:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 35:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 803,
        'c', 803,
        'I', 44,
        'i', 44,
        'L', 12,
        'l', 12,
        'O', 154,
        'o', 154,
        'S', 788,
        's', 788,
        'U', 78,
        'u', 78,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 36:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 803,
        'c', 803,
        'I', 44,
        'i', 44,
        'L', 12,
        'l', 12,
        'O', 153,
        'o', 153,
        'S', 788,
        's', 788,
        'U', 78,
        'u', 78,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 37:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(102);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 38:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(759);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(222);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 39:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(759);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 40:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(90);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(171);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 41:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(105);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 42:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(88);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(283);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 43:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(142);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 44:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(144);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 45:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(224);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 46:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'I', 82,
        'i', 82,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 166,
        'r', 166,
        'S', 785,
        's', 785,
        'T', 31,
        't', 31,
        'X', 47,
        'x', 47,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 47:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 166,
        'r', 166,
        'S', 55,
        's', 55,
        'T', 219,
        't', 219,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 48:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(801);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 49:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(226);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 50:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 213,
        'd', 213,
        'S', 806,
        's', 806,
        'C', 763,
        'T', 763,
        'c', 763,
        't', 763,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 51:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(150);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 52:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 34,
        'd', 34,
        'L', 235,
        'l', 235,
        'C', 788,
        'S', 788,
        'c', 788,
        's', 788,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 53:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 34,
        'd', 34,
        'R', 64,
        'r', 64,
        'T', 201,
        't', 201,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 54:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(34);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(201);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 55:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 34,
        'd', 34,
        'C', 788,
        'S', 788,
        'c', 788,
        's', 788,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 56:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(11);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 57:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(225);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 58:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(182);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 59:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(231);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 60:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(73);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 61:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(236);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 62:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(224);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 63:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 64:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(69);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 65:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(824);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 66:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(39);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 67:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(183);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 68:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(816);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 69:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 70:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(45);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 71:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(129);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 72:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(231);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 73:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(59);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 74:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(24);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 75:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(61);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 76:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 77:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(999);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 78:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(76);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(107);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 79:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(218);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 80:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(77);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 81:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(232);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 82:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(89);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 83:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(795);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 84:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(821);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 85:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(231);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 86:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(113);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 87:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'H', 819,
        'h', 819,
        'L', 802,
        'l', 802,
        'R', 5,
        'r', 5,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 88:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(229);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 89:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(191);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 90:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(67);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 91:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(124);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(123);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 92:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(186);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 93:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(178);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 94:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(120);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 95:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(14);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 96:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(173);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 97:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(135);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 98:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(121);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 99:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(104);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 100:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(147);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 101:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(25);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 102:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 103:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(70);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 104:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(65);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 105:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(234);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 106:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 107:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 108:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(81);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 109:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(114);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 110:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(146);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 111:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(68);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 112:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(72);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 113:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(63);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 114:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(231);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 115:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(62);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 116:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'M', 155,
        'm', 155,
        'N', 86,
        'n', 86,
        'X', 214,
        'x', 214,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 117:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(224);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 118:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(38);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 119:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 120:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(69);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 121:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(999);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 122:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(92);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 123:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(85);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 124:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(103);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 125:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(56);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 126:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(49);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(197);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 127:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(49);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 128:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(225);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 129:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 130:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(84);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 131:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(60);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 132:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(189);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 133:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(185);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 134:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(182);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 135:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(231);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 136:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(96);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 137:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(194);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 138:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(79);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 139:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(83);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 140:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(80);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 141:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 142:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(159);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 143:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(132);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 144:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(190);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 145:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(175);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 146:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(130);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 147:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(117);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 148:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(137);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 149:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(806);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(162);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 150:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 151:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(145);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 152:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(10);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 153:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(43);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(179);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 154:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(43);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 155:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(112);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 156:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 157:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(200);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(125);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 158:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(126);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 159:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(119);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 160:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(57);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 161:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(74);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 162:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 163:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(174);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 164:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 165:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(184);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 166:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 167:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(794);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 168:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(187);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 169:
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'S', 787,
        's', 787,
        'T', 149,
        't', 149,
        'V', 223,
        'v', 223,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 170:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 171:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(230);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 172:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(101);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 173:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(95);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 174:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(72);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 175:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(179);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 176:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(167);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 177:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(195);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 178:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(75);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 179:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(224);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 180:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(156);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(2);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 181:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(156);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(6);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 182:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(156);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 183:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 184:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 185:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(800);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 186:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(828);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 187:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(796);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 188:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(139);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 189:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 190:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(813);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 191:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(214);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 192:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(161);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 193:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(100);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 194:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(234);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 195:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(797);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 196:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(23);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 197:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(127);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(226);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 198:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(69);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 199:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(71);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 200:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(9);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 201:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 202:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(239);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 203:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 204:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(874);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 205:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 206:
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 207:
      ADVANCE_MAP(
        '\t', 404,
        ' ', 29,
        '.', 316,
        ':', 756,
        'B', 106,
        'b', 106,
        'C', 788,
        'c', 788,
        'E', 39,
        'e', 39,
        'O', 196,
        'o', 196,
        'T', 156,
        't', 156,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 208:
      ADVANCE_MAP(
        '\t', 402,
        ' ', 27,
        '.', 316,
        ':', 756,
        'A', 108,
        'a', 108,
        'D', 34,
        'd', 34,
        'T', 201,
        't', 201,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 209:
      ADVANCE_MAP(
        '\t', 436,
        ' ', 50,
        '.', 316,
        ':', 756,
        'C', 788,
        'c', 788,
        'D', 34,
        'd', 34,
        'E', 199,
        'e', 199,
        'H', 790,
        'h', 790,
        'I', 116,
        'i', 116,
        'L', 827,
        'l', 827,
        'P', 99,
        'p', 99,
        'S', 788,
        's', 788,
        'T', 796,
        't', 796,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 210:
      ADVANCE_MAP(
        '\t', 436,
        ' ', 50,
        '.', 316,
        ':', 756,
        'C', 788,
        'c', 788,
        'D', 34,
        'd', 34,
        'E', 199,
        'e', 199,
        'H', 790,
        'h', 790,
        'I', 116,
        'i', 116,
        'L', 827,
        'l', 827,
        'P', 99,
        'p', 99,
        'S', 788,
        's', 788,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 211:
      ADVANCE_MAP(
        '\t', 353,
        ' ', 15,
        '-', 360,
        '.', 316,
        ':', 756,
        'C', 788,
        'c', 788,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 53,
        'h', 53,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 809,
        'r', 809,
        'S', 52,
        's', 52,
        'T', 32,
        't', 32,
        'U', 136,
        'u', 136,
        'W', 141,
        'w', 141,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 212:
      if (lookahead == '\t') ADVANCE(663);
      if (lookahead == ' ') ADVANCE(165);
      if (lookahead == '-') ADVANCE(668);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(183);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 213:
      if (lookahead == '\t') ADVANCE(405);
      if (lookahead == ' ') ADVANCE(30);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 214:
      if (lookahead == '\t') ADVANCE(695);
      if (lookahead == ' ') ADVANCE(188);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(139);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 215:
      if (lookahead == '\t') ADVANCE(627);
      if (lookahead == ' ') ADVANCE(151);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 216:
      if (lookahead == '\t') ADVANCE(278);
      if (lookahead == ' ') ADVANCE(216);
      if (lookahead == ':') ADVANCE(753);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 217:
      ADVANCE_MAP(
        '\t', 403,
        ' ', 28,
        '.', 322,
        ':', 756,
        'B', 106,
        'b', 106,
        'C', 788,
        'c', 788,
        'E', 39,
        'e', 39,
        'O', 196,
        'o', 196,
        'T', 156,
        't', 156,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 218:
      if (lookahead == '\t') ADVANCE(406);
      if (lookahead == ' ') ADVANCE(42);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 219:
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        ':', 756,
        'C', 788,
        'c', 788,
        'E', 131,
        'e', 131,
        'R', 786,
        'r', 786,
        'T', 156,
        't', 156,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 220:
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        ':', 756,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 166,
        'r', 166,
        'S', 785,
        's', 785,
        'T', 32,
        't', 32,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 221:
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        ':', 756,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 54,
        'h', 54,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 166,
        'r', 166,
        'S', 55,
        's', 55,
        'T', 32,
        't', 32,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 222:
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        ':', 756,
        'D', 66,
        'd', 66,
        'I', 172,
        'i', 172,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 223:
      if (lookahead == '\t') ADVANCE(355);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(163);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 224:
      if (lookahead == '\t') ADVANCE(355);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 225:
      if (lookahead == '\t') ADVANCE(626);
      if (lookahead == ' ') ADVANCE(152);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 226:
      if (lookahead == '\t') ADVANCE(276);
      if (lookahead == ' ') ADVANCE(228);
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(227);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 227:
      if (lookahead == '\t') ADVANCE(276);
      if (lookahead == ' ') ADVANCE(228);
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == ':') ADVANCE(754);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 228:
      if (lookahead == '\t') ADVANCE(276);
      if (lookahead == ' ') ADVANCE(228);
      if (lookahead == ':') ADVANCE(754);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(279);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 229:
      if (lookahead == '\t') ADVANCE(736);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 230:
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(59);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 231:
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 232:
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(21);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 233:
      ADVANCE_MAP(
        '\t', 354,
        ' ', 16,
        '-', 360,
        '.', 322,
        ':', 756,
        'C', 788,
        'c', 788,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 166,
        'f', 166,
        'H', 53,
        'h', 53,
        'K', 166,
        'k', 166,
        'P', 166,
        'p', 166,
        'Q', 181,
        'q', 181,
        'R', 809,
        'r', 809,
        'S', 52,
        's', 52,
        'T', 32,
        't', 32,
        'U', 136,
        'u', 136,
        'W', 141,
        'w', 141,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 234:
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(20);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 235:
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(168);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(187);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 236:
      if (lookahead == '\t') ADVANCE(374);
      if (lookahead == ' ') ADVANCE(26);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(206);
      END_STATE();
    case 237:
      if (lookahead == '\n') ADVANCE(747);
      END_STATE();
    case 238:
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == '/') ADVANCE(1608);
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(239);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')' &&
          lookahead != '.' &&
          lookahead != '/') ADVANCE(239);
      END_STATE();
    case 239:
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(239);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')' &&
          lookahead != '.') ADVANCE(239);
      END_STATE();
    case 240:
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(275);
      END_STATE();
    case 241:
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(275);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(240);
      END_STATE();
    case 242:
      ADVANCE_MAP(
        '(', 735,
        'C', 505,
        'c', 505,
        'D', 399,
        'd', 399,
        'H', 443,
        'h', 443,
        'S', 398,
        's', 398,
        'T', 642,
        't', 642,
      );
      END_STATE();
    case 243:
      if (lookahead == ')') ADVANCE(275);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')') ADVANCE(243);
      END_STATE();
    case 244:
      if (lookahead == ')') ADVANCE(757);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(660);
      if ((!eof && set_contains(sym_count_character_set_4, 458, lookahead))) ADVANCE(248);
      END_STATE();
    case 245:
      if (lookahead == ')') ADVANCE(757);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(708);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(247);
      if ((!eof && set_contains(sym_count_character_set_3, 460, lookahead))) ADVANCE(248);
      END_STATE();
    case 246:
      if (lookahead == ')') ADVANCE(757);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(247);
      if ((!eof && set_contains(sym_count_character_set_2, 456, lookahead))) ADVANCE(248);
      END_STATE();
    case 247:
      if (lookahead == ')') ADVANCE(757);
      if ((!eof && set_contains(sym_count_character_set_2, 456, lookahead))) ADVANCE(248);
      END_STATE();
    case 248:
      if (lookahead == ')') ADVANCE(757);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')') ADVANCE(248);
      END_STATE();
    case 249:
      if (lookahead == ')') ADVANCE(317);
      if (lookahead == ' ' ||
          lookahead == ',' ||
          ('0' <= lookahead && lookahead <= '9')) ADVANCE(249);
      END_STATE();
    case 250:
      ADVANCE_MAP(
        '-', 360,
        '.', 316,
        ':', 756,
        '\t', 366,
        ' ', 366,
        'C', 891,
        'c', 891,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 439,
        'h', 439,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 878,
        'r', 878,
        'S', 438,
        's', 438,
        'T', 393,
        't', 393,
        'U', 579,
        'u', 579,
        'W', 613,
        'w', 613,
      );
      END_STATE();
    case 251:
      ADVANCE_MAP(
        '-', 360,
        '.', 316,
        '\t', 366,
        ' ', 366,
        'C', 891,
        'c', 891,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 439,
        'h', 439,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 878,
        'r', 878,
        'S', 438,
        's', 438,
        'T', 393,
        't', 393,
        'U', 579,
        'u', 579,
        'W', 613,
        'w', 613,
      );
      END_STATE();
    case 252:
      ADVANCE_MAP(
        '-', 360,
        '.', 322,
        ':', 756,
        '\t', 367,
        ' ', 367,
        'C', 891,
        'c', 891,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 439,
        'h', 439,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 878,
        'r', 878,
        'S', 438,
        's', 438,
        'T', 393,
        't', 393,
        'U', 579,
        'u', 579,
        'W', 613,
        'w', 613,
      );
      END_STATE();
    case 253:
      ADVANCE_MAP(
        '-', 360,
        '.', 322,
        '\t', 367,
        ' ', 367,
        'C', 891,
        'c', 891,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 439,
        'h', 439,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 878,
        'r', 878,
        'S', 438,
        's', 438,
        'T', 393,
        't', 393,
        'U', 579,
        'u', 579,
        'W', 613,
        'w', 613,
      );
      END_STATE();
    case 254:
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      END_STATE();
    case 255:
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(428);
      END_STATE();
    case 256:
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      END_STATE();
    case 257:
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(363);
      END_STATE();
    case 258:
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(375);
      END_STATE();
    case 259:
      if (lookahead == '-') ADVANCE(668);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(669);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(689);
      END_STATE();
    case 260:
      if (lookahead == '-') ADVANCE(668);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(669);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(689);
      END_STATE();
    case 261:
      if (lookahead == '-') ADVANCE(664);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(670);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(686);
      END_STATE();
    case 262:
      if (lookahead == '-') ADVANCE(679);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(680);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(697);
      END_STATE();
    case 263:
      ADVANCE_MAP(
        '.', 316,
        ':', 756,
        '\t', 384,
        ' ', 384,
        'B', 544,
        'b', 544,
        'C', 891,
        'c', 891,
        'E', 400,
        'e', 400,
        'O', 716,
        'o', 716,
        'T', 641,
        't', 641,
      );
      END_STATE();
    case 264:
      ADVANCE_MAP(
        '.', 316,
        ':', 756,
        '\t', 381,
        ' ', 381,
        'A', 549,
        'a', 549,
        'D', 390,
        'd', 390,
        'T', 729,
        't', 729,
      );
      END_STATE();
    case 265:
      ADVANCE_MAP(
        '.', 316,
        ':', 756,
        '\t', 431,
        ' ', 431,
        'C', 891,
        'c', 891,
        'D', 390,
        'd', 390,
        'E', 725,
        'e', 725,
        'H', 894,
        'h', 894,
        'I', 563,
        'i', 563,
        'L', 885,
        'l', 885,
        'P', 527,
        'p', 527,
        'S', 891,
        's', 891,
      );
      END_STATE();
    case 266:
      ADVANCE_MAP(
        '.', 316,
        ':', 756,
        '\t', 431,
        ' ', 431,
        'C', 891,
        'c', 891,
        'D', 390,
        'd', 390,
        'E', 725,
        'e', 725,
        'H', 894,
        'h', 894,
        'I', 563,
        'i', 563,
        'L', 885,
        'l', 885,
        'P', 527,
        'p', 527,
        'S', 891,
        's', 891,
        'T', 900,
        't', 900,
      );
      END_STATE();
    case 267:
      ADVANCE_MAP(
        '.', 316,
        '\t', 384,
        ' ', 384,
        'B', 544,
        'b', 544,
        'C', 891,
        'c', 891,
        'E', 400,
        'e', 400,
        'O', 716,
        'o', 716,
        'T', 641,
        't', 641,
      );
      END_STATE();
    case 268:
      ADVANCE_MAP(
        '.', 316,
        '\t', 384,
        ' ', 384,
        'B', 544,
        'b', 544,
        'C', 891,
        'c', 891,
        'E', 425,
        'e', 425,
        'O', 716,
        'o', 716,
        'T', 641,
        't', 641,
      );
      END_STATE();
    case 269:
      ADVANCE_MAP(
        '.', 316,
        '\t', 381,
        ' ', 381,
        'A', 549,
        'a', 549,
        'D', 390,
        'd', 390,
        'T', 729,
        't', 729,
      );
      END_STATE();
    case 270:
      ADVANCE_MAP(
        '.', 316,
        '\t', 431,
        ' ', 431,
        'C', 891,
        'c', 891,
        'D', 390,
        'd', 390,
        'E', 725,
        'e', 725,
        'H', 894,
        'h', 894,
        'I', 563,
        'i', 563,
        'L', 885,
        'l', 885,
        'P', 527,
        'p', 527,
        'S', 891,
        's', 891,
      );
      END_STATE();
    case 271:
      ADVANCE_MAP(
        '.', 316,
        '\t', 431,
        ' ', 431,
        'C', 891,
        'c', 891,
        'D', 390,
        'd', 390,
        'E', 725,
        'e', 725,
        'H', 894,
        'h', 894,
        'I', 563,
        'i', 563,
        'L', 885,
        'l', 885,
        'P', 527,
        'p', 527,
        'S', 891,
        's', 891,
        'T', 900,
        't', 900,
      );
      END_STATE();
    case 272:
      ADVANCE_MAP(
        '.', 322,
        ':', 756,
        '\t', 383,
        ' ', 383,
        'B', 544,
        'b', 544,
        'C', 891,
        'c', 891,
        'E', 400,
        'e', 400,
        'O', 716,
        'o', 716,
        'T', 641,
        't', 641,
      );
      END_STATE();
    case 273:
      ADVANCE_MAP(
        '.', 322,
        '\t', 383,
        ' ', 383,
        'B', 544,
        'b', 544,
        'C', 891,
        'c', 891,
        'E', 400,
        'e', 400,
        'O', 716,
        'o', 716,
        'T', 641,
        't', 641,
      );
      END_STATE();
    case 274:
      if (lookahead == '/') ADVANCE(1865);
      END_STATE();
    case 275:
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(275);
      END_STATE();
    case 276:
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(275);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 277:
      if (lookahead == ':') ADVANCE(753);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      END_STATE();
    case 278:
      if (lookahead == ':') ADVANCE(753);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 279:
      if (lookahead == ':') ADVANCE(756);
      END_STATE();
    case 280:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(703);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(604);
      END_STATE();
    case 281:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(385);
      END_STATE();
    case 282:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(630);
      END_STATE();
    case 283:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(419);
      END_STATE();
    case 284:
      ADVANCE_MAP(
        ':', 756,
        'A', 519,
        'a', 519,
        'D', 394,
        'd', 394,
        'E', 666,
        'e', 666,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'N', 430,
        'n', 430,
        'O', 719,
        'o', 719,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
      );
      END_STATE();
    case 285:
      ADVANCE_MAP(
        ':', 756,
        'A', 519,
        'a', 519,
        'D', 394,
        'd', 394,
        'E', 666,
        'e', 666,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
      );
      END_STATE();
    case 286:
      ADVANCE_MAP(
        ':', 756,
        'A', 568,
        'a', 568,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'I', 723,
        'i', 723,
        'K', 659,
        'k', 659,
        'O', 643,
        'o', 643,
        'P', 433,
        'p', 433,
        'Q', 706,
        'q', 706,
        'R', 615,
        'r', 615,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
        'U', 553,
        'u', 553,
        'W', 442,
        'w', 442,
      );
      END_STATE();
    case 287:
      ADVANCE_MAP(
        ':', 756,
        'A', 568,
        'a', 568,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'I', 723,
        'i', 723,
        'K', 659,
        'k', 659,
        'O', 643,
        'o', 643,
        'P', 433,
        'p', 433,
        'Q', 706,
        'q', 706,
        'R', 619,
        'r', 619,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
        'U', 553,
        'u', 553,
        'W', 442,
        'w', 442,
      );
      END_STATE();
    case 288:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(675);
      END_STATE();
    case 289:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(412);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(887);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(434);
      END_STATE();
    case 290:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(414);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(887);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(434);
      END_STATE();
    case 291:
      ADVANCE_MAP(
        ':', 756,
        'C', 907,
        'c', 907,
        'I', 420,
        'i', 420,
        'L', 350,
        'l', 350,
        'O', 634,
        'o', 634,
        'S', 891,
        's', 891,
        'U', 487,
        'u', 487,
      );
      END_STATE();
    case 292:
      ADVANCE_MAP(
        ':', 756,
        'C', 907,
        'c', 907,
        'I', 420,
        'i', 420,
        'L', 350,
        'l', 350,
        'O', 635,
        'o', 635,
        'S', 891,
        's', 891,
        'U', 487,
        'u', 487,
      );
      END_STATE();
    case 293:
      ADVANCE_MAP(
        ':', 756,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'I', 500,
        'i', 500,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 392,
        't', 392,
        'X', 435,
        'x', 435,
      );
      END_STATE();
    case 294:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(483);
      END_STATE();
    case 295:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(318);
      END_STATE();
    case 296:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(876);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(906);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(336);
      END_STATE();
    case 297:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(324);
      END_STATE();
    case 298:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(591);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(577);
      END_STATE();
    case 299:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(590);
      END_STATE();
    case 300:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1018);
      END_STATE();
    case 301:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(401);
      END_STATE();
    case 302:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(520);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(891);
      END_STATE();
    case 303:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(430);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(719);
      END_STATE();
    case 304:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(492);
      END_STATE();
    case 305:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(580);
      END_STATE();
    case 306:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(678);
      END_STATE();
    case 307:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(480);
      END_STATE();
    case 308:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(896);
      END_STATE();
    case 309:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(900);
      END_STATE();
    case 310:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(641);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(338);
      END_STATE();
    case 311:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(901);
      END_STATE();
    case 312:
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      END_STATE();
    case 313:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(731);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(239);
      END_STATE();
    case 314:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(703);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(604);
      END_STATE();
    case 315:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(242);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(315);
      END_STATE();
    case 316:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(730);
      END_STATE();
    case 317:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(386);
      END_STATE();
    case 318:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(416);
      END_STATE();
    case 319:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(444);
      END_STATE();
    case 320:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(444);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(672);
      END_STATE();
    case 321:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(385);
      END_STATE();
    case 322:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(382);
      END_STATE();
    case 323:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(630);
      END_STATE();
    case 324:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(733);
      END_STATE();
    case 325:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(644);
      END_STATE();
    case 326:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(628);
      END_STATE();
    case 327:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(419);
      END_STATE();
    case 328:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(702);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(600);
      END_STATE();
    case 329:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(710);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(607);
      END_STATE();
    case 330:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(692);
      END_STATE();
    case 331:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(450);
      END_STATE();
    case 332:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(450);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(684);
      END_STATE();
    case 333:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(638);
      END_STATE();
    case 334:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(639);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(989);
      END_STATE();
    case 335:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(387);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(923);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(934);
      END_STATE();
    case 336:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(368);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(411);
      END_STATE();
    case 337:
      ADVANCE_MAP(
        'A', 566,
        'a', 566,
        'I', 721,
        'i', 721,
        'O', 717,
        'o', 717,
        'P', 934,
        'p', 934,
        'R', 603,
        'r', 603,
      );
      END_STATE();
    case 338:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(429);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(585);
      END_STATE();
    case 339:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(446);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(586);
      END_STATE();
    case 340:
      ADVANCE_MAP(
        'A', 519,
        'a', 519,
        'D', 394,
        'd', 394,
        'E', 666,
        'e', 666,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'N', 430,
        'n', 430,
        'O', 719,
        'o', 719,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
      );
      END_STATE();
    case 341:
      ADVANCE_MAP(
        'A', 519,
        'a', 519,
        'D', 394,
        'd', 394,
        'E', 666,
        'e', 666,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
      );
      END_STATE();
    case 342:
      ADVANCE_MAP(
        'A', 568,
        'a', 568,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'I', 723,
        'i', 723,
        'K', 659,
        'k', 659,
        'O', 643,
        'o', 643,
        'P', 433,
        'p', 433,
        'Q', 706,
        'q', 706,
        'R', 615,
        'r', 615,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
        'U', 553,
        'u', 553,
        'W', 442,
        'w', 442,
      );
      END_STATE();
    case 343:
      ADVANCE_MAP(
        'A', 568,
        'a', 568,
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'I', 723,
        'i', 723,
        'K', 659,
        'k', 659,
        'O', 643,
        'o', 643,
        'P', 433,
        'p', 433,
        'Q', 706,
        'q', 706,
        'R', 619,
        'r', 619,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
        'U', 553,
        'u', 553,
        'W', 442,
        'w', 442,
      );
      END_STATE();
    case 344:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(675);
      END_STATE();
    case 345:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(649);
      END_STATE();
    case 346:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(567);
      END_STATE();
    case 347:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(709);
      END_STATE();
    case 348:
      ADVANCE_MAP(
        'A', 571,
        'a', 571,
        'I', 724,
        'i', 724,
        'O', 720,
        'o', 720,
        'P', 740,
        'p', 740,
        'R', 621,
        'r', 621,
      );
      END_STATE();
    case 349:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(412);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(887);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(434);
      END_STATE();
    case 350:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(521);
      END_STATE();
    case 351:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(414);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(887);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(434);
      END_STATE();
    case 352:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(417);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(373);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(740);
      END_STATE();
    case 353:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 838,
        'c', 838,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 285,
        'r', 285,
        'S', 265,
        's', 265,
        'T', 833,
        't', 833,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 354:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 838,
        'c', 838,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 837,
        'r', 837,
        'S', 265,
        's', 265,
        'T', 833,
        't', 833,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 355:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 296,
        'c', 296,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 285,
        'r', 285,
        'S', 265,
        's', 265,
        'T', 250,
        't', 250,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 356:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 296,
        'c', 296,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 285,
        'r', 285,
        'S', 266,
        's', 266,
        'T', 250,
        't', 250,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 357:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 296,
        'c', 296,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 284,
        'r', 284,
        'S', 265,
        's', 265,
        'T', 250,
        't', 250,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 358:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 296,
        'c', 296,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 292,
        'p', 292,
        'Q', 310,
        'q', 310,
        'R', 285,
        'r', 285,
        'S', 265,
        's', 265,
        'T', 250,
        't', 250,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 359:
      ADVANCE_MAP(
        'B', 289,
        'b', 289,
        'C', 296,
        'c', 296,
        'D', 272,
        'd', 272,
        'E', 293,
        'e', 293,
        'F', 286,
        'f', 286,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 285,
        'r', 285,
        'S', 265,
        's', 265,
        'T', 252,
        't', 252,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 360:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 504,
        'c', 504,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 270,
        's', 270,
        'T', 251,
        't', 251,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 361:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 504,
        'c', 504,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 271,
        's', 271,
        'T', 251,
        't', 251,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 362:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 504,
        'c', 504,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 340,
        'r', 340,
        'S', 270,
        's', 270,
        'T', 251,
        't', 251,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 363:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 504,
        'c', 504,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 396,
        'p', 396,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 270,
        's', 270,
        'T', 251,
        't', 251,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 364:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 504,
        'c', 504,
        'D', 273,
        'd', 273,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 270,
        's', 270,
        'T', 253,
        't', 253,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 365:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 504,
        'c', 504,
        'D', 268,
        'd', 268,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 270,
        's', 270,
        'T', 251,
        't', 251,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 366:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 842,
        'c', 842,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 270,
        's', 270,
        'T', 834,
        't', 834,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 367:
      ADVANCE_MAP(
        'B', 349,
        'b', 349,
        'C', 842,
        'c', 842,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 342,
        'f', 342,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 841,
        'r', 841,
        'S', 270,
        's', 270,
        'T', 834,
        't', 834,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 368:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(886);
      END_STATE();
    case 369:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(555);
      END_STATE();
    case 370:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(557);
      END_STATE();
    case 371:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(558);
      END_STATE();
    case 372:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(559);
      END_STATE();
    case 373:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 374:
      ADVANCE_MAP(
        'B', 290,
        'b', 290,
        'C', 296,
        'c', 296,
        'D', 263,
        'd', 263,
        'E', 293,
        'e', 293,
        'F', 287,
        'f', 287,
        'H', 264,
        'h', 264,
        'I', 301,
        'i', 301,
        'K', 302,
        'k', 302,
        'L', 298,
        'l', 298,
        'N', 299,
        'n', 299,
        'P', 291,
        'p', 291,
        'Q', 310,
        'q', 310,
        'R', 285,
        'r', 285,
        'S', 265,
        's', 265,
        'T', 250,
        't', 250,
        'V', 259,
        'v', 259,
        'X', 312,
        'x', 312,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(280);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 375:
      ADVANCE_MAP(
        'B', 351,
        'b', 351,
        'C', 504,
        'c', 504,
        'D', 267,
        'd', 267,
        'E', 432,
        'e', 432,
        'F', 343,
        'f', 343,
        'H', 269,
        'h', 269,
        'I', 572,
        'i', 572,
        'K', 576,
        'k', 576,
        'L', 518,
        'l', 518,
        'N', 524,
        'n', 524,
        'P', 395,
        'p', 395,
        'Q', 705,
        'q', 705,
        'R', 341,
        'r', 341,
        'S', 270,
        's', 270,
        'T', 251,
        't', 251,
        'V', 260,
        'v', 260,
        'X', 728,
        'x', 728,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(314);
      END_STATE();
    case 376:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(562);
      END_STATE();
    case 377:
      ADVANCE_MAP(
        'C', 934,
        'c', 934,
        'E', 722,
        'e', 722,
        'H', 454,
        'h', 454,
        'I', 574,
        'i', 574,
        'P', 514,
        'p', 514,
        'T', 928,
        't', 928,
      );
      END_STATE();
    case 378:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(989);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(941);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(988);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 379:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(989);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(938);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(966);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 380:
      ADVANCE_MAP(
        'C', 932,
        'c', 932,
        'I', 415,
        'i', 415,
        'O', 632,
        'o', 632,
        'U', 485,
        'u', 485,
      );
      END_STATE();
    case 381:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(321);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(843);
      END_STATE();
    case 382:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(844);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(844);
      END_STATE();
    case 383:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(844);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(843);
      END_STATE();
    case 384:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(843);
      END_STATE();
    case 385:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(910);
      END_STATE();
    case 386:
      ADVANCE_MAP(
        'C', 505,
        'c', 505,
        'D', 399,
        'd', 399,
        'H', 443,
        'h', 443,
        'S', 398,
        's', 398,
        'T', 642,
        't', 642,
      );
      END_STATE();
    case 387:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(535);
      END_STATE();
    case 388:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(930);
      END_STATE();
    case 389:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(930);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(320);
      END_STATE();
    case 390:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(891);
      END_STATE();
    case 391:
      ADVANCE_MAP(
        'C', 891,
        'c', 891,
        'E', 592,
        'e', 592,
        'R', 889,
        'r', 889,
        'T', 641,
        't', 641,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      END_STATE();
    case 392:
      ADVANCE_MAP(
        'C', 891,
        'c', 891,
        'R', 889,
        'r', 889,
        'S', 658,
        's', 658,
        'T', 641,
        't', 641,
      );
      END_STATE();
    case 393:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(891);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(889);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(641);
      END_STATE();
    case 394:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(891);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(641);
      END_STATE();
    case 395:
      ADVANCE_MAP(
        'C', 907,
        'c', 907,
        'I', 420,
        'i', 420,
        'L', 350,
        'l', 350,
        'O', 634,
        'o', 634,
        'S', 891,
        's', 891,
        'U', 487,
        'u', 487,
      );
      END_STATE();
    case 396:
      ADVANCE_MAP(
        'C', 907,
        'c', 907,
        'I', 420,
        'i', 420,
        'L', 350,
        'l', 350,
        'O', 635,
        'o', 635,
        'S', 891,
        's', 891,
        'U', 487,
        'u', 487,
      );
      END_STATE();
    case 397:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(247);
      END_STATE();
    case 398:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(247);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(246);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(245);
      END_STATE();
    case 399:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(247);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(642);
      END_STATE();
    case 400:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(831);
      END_STATE();
    case 401:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(831);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(445);
      END_STATE();
    case 402:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(840);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(281);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(839);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 403:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(840);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(840);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(839);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 404:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(840);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(839);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 405:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(874);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 406:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(297);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(283);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 407:
      ADVANCE_MAP(
        'C', 740,
        'c', 740,
        'E', 726,
        'e', 726,
        'H', 475,
        'h', 475,
        'I', 596,
        'i', 596,
        'P', 529,
        'p', 529,
        'T', 523,
        't', 523,
      );
      END_STATE();
    case 408:
      ADVANCE_MAP(
        'C', 657,
        'c', 657,
        'I', 423,
        'i', 423,
        'O', 636,
        'o', 636,
        'U', 489,
        'u', 489,
      );
      END_STATE();
    case 409:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(656);
      END_STATE();
    case 410:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(656);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(332);
      END_STATE();
    case 411:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(509);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(661);
      END_STATE();
    case 412:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(538);
      END_STATE();
    case 413:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(506);
      END_STATE();
    case 414:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(542);
      END_STATE();
    case 415:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(599);
      END_STATE();
    case 416:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(508);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(327);
      END_STATE();
    case 417:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(536);
      END_STATE();
    case 418:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(606);
      END_STATE();
    case 419:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(503);
      END_STATE();
    case 420:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(609);
      END_STATE();
    case 421:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(602);
      END_STATE();
    case 422:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(608);
      END_STATE();
    case 423:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(612);
      END_STATE();
    case 424:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(616);
      END_STATE();
    case 425:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(832);
      END_STATE();
    case 426:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(910);
      END_STATE();
    case 427:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(728);
      END_STATE();
    case 428:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(254);
      END_STATE();
    case 429:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(905);
      END_STATE();
    case 430:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(241);
      END_STATE();
    case 431:
      ADVANCE_MAP(
        'D', 321,
        'd', 321,
        'S', 910,
        's', 910,
        'C', 844,
        'T', 844,
        'c', 844,
        't', 844,
      );
      END_STATE();
    case 432:
      ADVANCE_MAP(
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'I', 500,
        'i', 500,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 392,
        't', 392,
        'X', 435,
        'x', 435,
      );
      END_STATE();
    case 433:
      ADVANCE_MAP(
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 888,
        's', 888,
        'T', 393,
        't', 393,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      END_STATE();
    case 434:
      ADVANCE_MAP(
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 441,
        's', 441,
        'T', 393,
        't', 393,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      END_STATE();
    case 435:
      ADVANCE_MAP(
        'D', 394,
        'd', 394,
        'E', 665,
        'e', 665,
        'F', 659,
        'f', 659,
        'H', 440,
        'h', 440,
        'K', 659,
        'k', 659,
        'P', 659,
        'p', 659,
        'Q', 706,
        'q', 706,
        'R', 659,
        'r', 659,
        'S', 441,
        's', 441,
        'T', 391,
        't', 391,
      );
      END_STATE();
    case 436:
      ADVANCE_MAP(
        'D', 281,
        'd', 281,
        'S', 874,
        's', 874,
        'C', 840,
        'T', 840,
        'c', 840,
        't', 840,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 437:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(347);
      END_STATE();
    case 438:
      ADVANCE_MAP(
        'D', 390,
        'd', 390,
        'L', 330,
        'l', 330,
        'C', 891,
        'S', 891,
        'c', 891,
        's', 891,
      );
      END_STATE();
    case 439:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(390);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(472);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(729);
      END_STATE();
    case 440:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(390);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(729);
      END_STATE();
    case 441:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(390);
      if (lookahead == 'C' ||
          lookahead == 'S' ||
          lookahead == 'c' ||
          lookahead == 's') ADVANCE(891);
      END_STATE();
    case 442:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(624);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(910);
      END_STATE();
    case 443:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(397);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(642);
      END_STATE();
    case 444:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(464);
      END_STATE();
    case 445:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(462);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(683);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      END_STATE();
    case 446:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(704);
      END_STATE();
    case 447:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(469);
      END_STATE();
    case 448:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(258);
      END_STATE();
    case 449:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(326);
      END_STATE();
    case 450:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(470);
      END_STATE();
    case 451:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(328);
      END_STATE();
    case 452:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(932);
      END_STATE();
    case 453:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(728);
      END_STATE();
    case 454:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(551);
      END_STATE();
    case 455:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(907);
      END_STATE();
    case 456:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(254);
      END_STATE();
    case 457:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(836);
      END_STATE();
    case 458:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(657);
      END_STATE();
    case 459:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(451);
      END_STATE();
    case 460:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(689);
      END_STATE();
    case 461:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(882);
      END_STATE();
    case 462:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(400);
      END_STATE();
    case 463:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(427);
      END_STATE();
    case 464:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(388);
      END_STATE();
    case 465:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(653);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      END_STATE();
    case 466:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(448);
      END_STATE();
    case 467:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(564);
      END_STATE();
    case 468:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(319);
      END_STATE();
    case 469:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(428);
      END_STATE();
    case 470:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(409);
      END_STATE();
    case 471:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(314);
      END_STATE();
    case 472:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(471);
      END_STATE();
    case 473:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(589);
      END_STATE();
    case 474:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(329);
      END_STATE();
    case 475:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(554);
      END_STATE();
    case 476:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(474);
      END_STATE();
    case 477:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(594);
      END_STATE();
    case 478:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(985);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 479:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(331);
      END_STATE();
    case 480:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(370);
      END_STATE();
    case 481:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(932);
      END_STATE();
    case 482:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(907);
      END_STATE();
    case 483:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1018);
      END_STATE();
    case 484:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(657);
      END_STATE();
    case 485:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(481);
      END_STATE();
    case 486:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(256);
      END_STATE();
    case 487:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(482);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(545);
      END_STATE();
    case 488:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(483);
      END_STATE();
    case 489:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(484);
      END_STATE();
    case 490:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(318);
      END_STATE();
    case 491:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(927);
      END_STATE();
    case 492:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(899);
      END_STATE();
    case 493:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(254);
      END_STATE();
    case 494:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(478);
      END_STATE();
    case 495:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(507);
      END_STATE();
    case 496:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(883);
      END_STATE();
    case 497:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(552);
      END_STATE();
    case 498:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(557);
      END_STATE();
    case 499:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(560);
      END_STATE();
    case 500:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(510);
      END_STATE();
    case 501:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(511);
      END_STATE();
    case 502:
      ADVANCE_MAP(
        'H', 647,
        'h', 647,
        'O', 491,
        'o', 491,
        'R', 925,
        'r', 925,
        'W', 597,
        'w', 597,
      );
      END_STATE();
    case 503:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(910);
      END_STATE();
    case 504:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(876);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(906);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(336);
      END_STATE();
    case 505:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(246);
      END_STATE();
    case 506:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(244);
      END_STATE();
    case 507:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(685);
      END_STATE();
    case 508:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(324);
      END_STATE();
    case 509:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(460);
      END_STATE();
    case 510:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(711);
      END_STATE();
    case 511:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(713);
      END_STATE();
    case 512:
      ADVANCE_MAP(
        'H', 655,
        'h', 655,
        'O', 494,
        'o', 494,
        'R', 379,
        'r', 379,
        'W', 617,
        'w', 617,
      );
      END_STATE();
    case 513:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(495);
      END_STATE();
    case 514:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(537);
      END_STATE();
    case 515:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(300);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 516:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(573);
      END_STATE();
    case 517:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(346);
      END_STATE();
    case 518:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(591);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(577);
      END_STATE();
    case 519:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(674);
      END_STATE();
    case 520:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(700);
      END_STATE();
    case 521:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(569);
      END_STATE();
    case 522:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(570);
      END_STATE();
    case 523:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(986);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 524:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(590);
      END_STATE();
    case 525:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(673);
      END_STATE();
    case 526:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(611);
      END_STATE();
    case 527:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(540);
      END_STATE();
    case 528:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(595);
      END_STATE();
    case 529:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(541);
      END_STATE();
    case 530:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(421);
      END_STATE();
    case 531:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(371);
      END_STATE();
    case 532:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(372);
      END_STATE();
    case 533:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(376);
      END_STATE();
    case 534:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(501);
      END_STATE();
    case 535:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(922);
      END_STATE();
    case 536:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(334);
      END_STATE();
    case 537:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(452);
      END_STATE();
    case 538:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(333);
      END_STATE();
    case 539:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(463);
      END_STATE();
    case 540:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(457);
      END_STATE();
    case 541:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(458);
      END_STATE();
    case 542:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(257);
      END_STATE();
    case 543:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(932);
      END_STATE();
    case 544:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(910);
      END_STATE();
    case 545:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(907);
      END_STATE();
    case 546:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(254);
      END_STATE();
    case 547:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(973);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(964);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 548:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(657);
      END_STATE();
    case 549:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(486);
      END_STATE();
    case 550:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(305);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 551:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(543);
      END_STATE();
    case 552:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(452);
      END_STATE();
    case 553:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(546);
      END_STATE();
    case 554:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(548);
      END_STATE();
    case 555:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(461);
      END_STATE();
    case 556:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(456);
      END_STATE();
    case 557:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(455);
      END_STATE();
    case 558:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(468);
      END_STATE();
    case 559:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(453);
      END_STATE();
    case 560:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(458);
      END_STATE();
    case 561:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(610);
      END_STATE();
    case 562:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(479);
      END_STATE();
    case 563:
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(633);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(498);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(314);
      END_STATE();
    case 564:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(328);
      END_STATE();
    case 565:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(389);
      END_STATE();
    case 566:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(932);
      END_STATE();
    case 567:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(728);
      END_STATE();
    case 568:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(907);
      END_STATE();
    case 569:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(254);
      END_STATE();
    case 570:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1018);
      END_STATE();
    case 571:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(657);
      END_STATE();
    case 572:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(401);
      END_STATE();
    case 573:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(451);
      END_STATE();
    case 574:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(497);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(328);
      END_STATE();
    case 575:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(410);
      END_STATE();
    case 576:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(520);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(891);
      END_STATE();
    case 577:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(493);
      END_STATE();
    case 578:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(437);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(314);
      END_STATE();
    case 579:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(525);
      END_STATE();
    case 580:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(496);
      END_STATE();
    case 581:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(430);
      END_STATE();
    case 582:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(430);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(719);
      END_STATE();
    case 583:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(691);
      END_STATE();
    case 584:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(707);
      END_STATE();
    case 585:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(693);
      END_STATE();
    case 586:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(704);
      END_STATE();
    case 587:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(715);
      END_STATE();
    case 588:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(699);
      END_STATE();
    case 589:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(314);
      END_STATE();
    case 590:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(471);
      END_STATE();
    case 591:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(539);
      END_STATE();
    case 592:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(447);
      END_STATE();
    case 593:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(326);
      END_STATE();
    case 594:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(329);
      END_STATE();
    case 595:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(474);
      END_STATE();
    case 596:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(499);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(329);
      END_STATE();
    case 597:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(328);
      END_STATE();
    case 598:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(295);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 599:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(686);
      END_STATE();
    case 600:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(491);
      END_STATE();
    case 601:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(294);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 602:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(689);
      END_STATE();
    case 603:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(583);
      END_STATE();
    case 604:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(492);
      END_STATE();
    case 605:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(490);
      END_STATE();
    case 606:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(646);
      END_STATE();
    case 607:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(494);
      END_STATE();
    case 608:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(648);
      END_STATE();
    case 609:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(701);
      END_STATE();
    case 610:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(580);
      END_STATE();
    case 611:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(567);
      END_STATE();
    case 612:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(697);
      END_STATE();
    case 613:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(314);
      END_STATE();
    case 614:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(488);
      END_STATE();
    case 615:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(584);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(891);
      END_STATE();
    case 616:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(651);
      END_STATE();
    case 617:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(329);
      END_STATE();
    case 618:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(664);
      END_STATE();
    case 619:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(587);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(891);
      END_STATE();
    case 620:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(677);
      END_STATE();
    case 621:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(588);
      END_STATE();
    case 622:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(678);
      END_STATE();
    case 623:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(679);
      END_STATE();
    case 624:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(910);
      END_STATE();
    case 625:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(910);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(650);
      END_STATE();
    case 626:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(288);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 627:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(306);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 628:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(344);
      END_STATE();
    case 629:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(325);
      END_STATE();
    case 630:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(530);
      END_STATE();
    case 631:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(620);
      END_STATE();
    case 632:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(418);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(686);
      END_STATE();
    case 633:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(556);
      END_STATE();
    case 634:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(422);
      END_STATE();
    case 635:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(422);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(688);
      END_STATE();
    case 636:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(424);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(697);
      END_STATE();
    case 637:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(618);
      END_STATE();
    case 638:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(622);
      END_STATE();
    case 639:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(623);
      END_STATE();
    case 640:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(328);
      END_STATE();
    case 641:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(891);
      END_STATE();
    case 642:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(247);
      END_STATE();
    case 643:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(727);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(578);
      END_STATE();
    case 644:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(582);
      END_STATE();
    case 645:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(303);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 646:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(566);
      END_STATE();
    case 647:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(459);
      END_STATE();
    case 648:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(568);
      END_STATE();
    case 649:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(449);
      END_STATE();
    case 650:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(593);
      END_STATE();
    case 651:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(571);
      END_STATE();
    case 652:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(480);
      END_STATE();
    case 653:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(676);
      END_STATE();
    case 654:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(329);
      END_STATE();
    case 655:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(476);
      END_STATE();
    case 656:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(954);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 657:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 658:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      END_STATE();
    case 659:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(891);
      END_STATE();
    case 660:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(247);
      END_STATE();
    case 661:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(255);
      END_STATE();
    case 662:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(898);
      END_STATE();
    case 663:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(308);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 664:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(686);
      END_STATE();
    case 665:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(890);
      END_STATE();
    case 666:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(890);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(625);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(465);
      END_STATE();
    case 667:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(309);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 668:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(689);
      END_STATE();
    case 669:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(690);
      END_STATE();
    case 670:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(687);
      END_STATE();
    case 671:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(692);
      END_STATE();
    case 672:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(531);
      END_STATE();
    case 673:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(517);
      END_STATE();
    case 674:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(466);
      END_STATE();
    case 675:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(662);
      END_STATE();
    case 676:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(456);
      END_STATE();
    case 677:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(694);
      END_STATE();
    case 678:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(688);
      END_STATE();
    case 679:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(697);
      END_STATE();
    case 680:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(698);
      END_STATE();
    case 681:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(311);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 682:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(714);
      END_STATE();
    case 683:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(532);
      END_STATE();
    case 684:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(533);
      END_STATE();
    case 685:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(328);
      END_STATE();
    case 686:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(932);
      END_STATE();
    case 687:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(928);
      END_STATE();
    case 688:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(728);
      END_STATE();
    case 689:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(907);
      END_STATE();
    case 690:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(896);
      END_STATE();
    case 691:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(922);
      END_STATE();
    case 692:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(900);
      END_STATE();
    case 693:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(904);
      END_STATE();
    case 694:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(933);
      END_STATE();
    case 695:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(304);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 696:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(307);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 697:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(657);
      END_STATE();
    case 698:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(523);
      END_STATE();
    case 699:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(334);
      END_STATE();
    case 700:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(886);
      END_STATE();
    case 701:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(880);
      END_STATE();
    case 702:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(600);
      END_STATE();
    case 703:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(604);
      END_STATE();
    case 704:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(641);
      END_STATE();
    case 705:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(641);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(338);
      END_STATE();
    case 706:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(641);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(339);
      END_STATE();
    case 707:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(333);
      END_STATE();
    case 708:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(413);
      END_STATE();
    case 709:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(526);
      END_STATE();
    case 710:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(607);
      END_STATE();
    case 711:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(314);
      END_STATE();
    case 712:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(652);
      END_STATE();
    case 713:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(329);
      END_STATE();
    case 714:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(901);
      END_STATE();
    case 715:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(257);
      END_STATE();
    case 716:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(369);
      END_STATE();
    case 717:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(640);
      END_STATE();
    case 718:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(629);
      END_STATE();
    case 719:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(581);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(241);
      END_STATE();
    case 720:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(654);
      END_STATE();
    case 721:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(451);
      END_STATE();
    case 722:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(467);
      END_STATE();
    case 723:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(471);
      END_STATE();
    case 724:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(474);
      END_STATE();
    case 725:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(473);
      END_STATE();
    case 726:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(477);
      END_STATE();
    case 727:
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(345);
      END_STATE();
    case 728:
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      END_STATE();
    case 729:
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(891);
      END_STATE();
    case 730:
      if (lookahead == 'C' ||
          lookahead == 'T' ||
          lookahead == 'c' ||
          lookahead == 't') ADVANCE(844);
      END_STATE();
    case 731:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(239);
      END_STATE();
    case 732:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(239);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 733:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(910);
      END_STATE();
    case 734:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1023);
      END_STATE();
    case 735:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(249);
      END_STATE();
    case 736:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(874);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 737:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(323);
      END_STATE();
    case 738:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 739:
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(279);
      END_STATE();
    case 740:
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 741:
      if (eof) ADVANCE(746);
      ADVANCE_MAP(
        '\n', 747,
        '\r', 237,
        '(', 1020,
        '-', 1867,
        '/', 1866,
        '\t', 749,
        ' ', 749,
        'B', 1634,
        'b', 1634,
        'C', 918,
        'c', 918,
        'D', 912,
        'd', 912,
        'E', 1679,
        'e', 1679,
        'F', 1640,
        'f', 1640,
        'H', 1620,
        'h', 1620,
        'I', 1771,
        'i', 1771,
        'J', 1801,
        'j', 1801,
        'K', 1783,
        'k', 1783,
        'L', 1696,
        'l', 1696,
        'M', 1635,
        'm', 1635,
        'N', 1741,
        'n', 1741,
        'O', 1787,
        'o', 1787,
        'P', 1661,
        'p', 1661,
        'Q', 1832,
        'q', 1832,
        'R', 1645,
        'r', 1645,
        'S', 1623,
        's', 1623,
        'T', 1609,
        't', 1609,
        'V', 1617,
        'v', 1617,
        'W', 1708,
        'w', 1708,
        'X', 1861,
        'x', 1861,
        ')', 1019,
        '*', 1019,
        '[', 1019,
        ']', 1019,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1869);
      END_STATE();
    case 742:
      if (eof) ADVANCE(746);
      ADVANCE_MAP(
        '\n', 747,
        '\r', 237,
        '(', 1020,
        '-', 1868,
        '/', 1866,
        '\t', 750,
        ' ', 750,
        'B', 1649,
        'b', 1649,
        'C', 1732,
        'c', 1732,
        'D', 1619,
        'd', 1619,
        'E', 1679,
        'e', 1679,
        'F', 1641,
        'f', 1641,
        'H', 1620,
        'h', 1620,
        'I', 1782,
        'i', 1782,
        'J', 1801,
        'j', 1801,
        'K', 1783,
        'k', 1783,
        'L', 1696,
        'l', 1696,
        'M', 1635,
        'm', 1635,
        'N', 1741,
        'n', 1741,
        'O', 1787,
        'o', 1787,
        'P', 1662,
        'p', 1662,
        'Q', 1832,
        'q', 1832,
        'R', 1645,
        'r', 1645,
        'S', 1624,
        's', 1624,
        'T', 1610,
        't', 1610,
        'V', 1617,
        'v', 1617,
        'W', 1708,
        'w', 1708,
        'X', 1861,
        'x', 1861,
        ')', 1019,
        '*', 1019,
        '[', 1019,
        ']', 1019,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1869);
      END_STATE();
    case 743:
      if (eof) ADVANCE(746);
      ADVANCE_MAP(
        '\n', 747,
        '\r', 237,
        '(', 1020,
        '/', 1866,
        '\t', 748,
        ' ', 748,
        'B', 1395,
        'b', 1395,
        'C', 1471,
        'c', 1471,
        'D', 1582,
        'd', 1582,
        'E', 1426,
        'e', 1426,
        'F', 1399,
        'f', 1399,
        'H', 1583,
        'h', 1583,
        'I', 1503,
        'i', 1503,
        'J', 1526,
        'j', 1526,
        'K', 1511,
        'k', 1511,
        'L', 1402,
        'l', 1402,
        'M', 1396,
        'm', 1396,
        'N', 1440,
        'n', 1440,
        'O', 1515,
        'o', 1515,
        'P', 1414,
        'p', 1414,
        'Q', 1556,
        'q', 1556,
        'R', 1584,
        'r', 1584,
        'S', 1588,
        's', 1588,
        'T', 1589,
        't', 1589,
        'V', 1590,
        'v', 1590,
        'W', 1449,
        'w', 1449,
        'X', 1600,
        'x', 1600,
        ')', 1019,
        '*', 1019,
        '[', 1019,
        ']', 1019,
        'A', 1581,
        'G', 1581,
        'U', 1581,
        'Y', 1581,
        'Z', 1581,
        'a', 1581,
        'g', 1581,
        'u', 1581,
        'y', 1581,
        'z', 1581,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1869);
      END_STATE();
    case 744:
      if (eof) ADVANCE(746);
      ADVANCE_MAP(
        '\n', 747,
        '\r', 237,
        '(', 1020,
        '/', 1866,
        '\t', 748,
        ' ', 748,
        'B', 1649,
        'b', 1649,
        'C', 1732,
        'c', 1732,
        'D', 1619,
        'd', 1619,
        'E', 1679,
        'e', 1679,
        'F', 1641,
        'f', 1641,
        'H', 1620,
        'h', 1620,
        'I', 1782,
        'i', 1782,
        'J', 1801,
        'j', 1801,
        'K', 1783,
        'k', 1783,
        'L', 1696,
        'l', 1696,
        'M', 1635,
        'm', 1635,
        'N', 1741,
        'n', 1741,
        'O', 1787,
        'o', 1787,
        'P', 1662,
        'p', 1662,
        'Q', 1832,
        'q', 1832,
        'R', 1645,
        'r', 1645,
        'S', 1624,
        's', 1624,
        'T', 1610,
        't', 1610,
        'V', 1617,
        'v', 1617,
        'W', 1708,
        'w', 1708,
        'X', 1861,
        'x', 1861,
        ')', 1019,
        '*', 1019,
        '[', 1019,
        ']', 1019,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1869);
      END_STATE();
    case 745:
      if (eof) ADVANCE(746);
      ADVANCE_MAP(
        '\n', 747,
        '\r', 237,
        '(', 1020,
        '/', 1866,
        'B', 1649,
        'b', 1649,
        'C', 1732,
        'c', 1732,
        'D', 1619,
        'd', 1619,
        'E', 1679,
        'e', 1679,
        'F', 1639,
        'f', 1639,
        'H', 1620,
        'h', 1620,
        'I', 1782,
        'i', 1782,
        'J', 1796,
        'j', 1796,
        'K', 1783,
        'k', 1783,
        'L', 1644,
        'l', 1644,
        'M', 1635,
        'm', 1635,
        'N', 1697,
        'n', 1697,
        'O', 1787,
        'o', 1787,
        'P', 1662,
        'p', 1662,
        'Q', 1832,
        'q', 1832,
        'R', 1625,
        'r', 1625,
        'S', 1622,
        's', 1622,
        'T', 1610,
        't', 1610,
        'V', 1617,
        'v', 1617,
        'W', 1708,
        'w', 1708,
        'X', 1861,
        'x', 1861,
        ')', 1019,
        '*', 1019,
        '[', 1019,
        ']', 1019,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead) &&
          lookahead != ' ') ADVANCE(1869);
      END_STATE();
    case 746:
      ACCEPT_TOKEN(ts_builtin_sym_end);
      END_STATE();
    case 747:
      ACCEPT_TOKEN(aux_sym_pattern_token1);
      END_STATE();
    case 748:
      ACCEPT_TOKEN(sym__space);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(748);
      END_STATE();
    case 749:
      ACCEPT_TOKEN(sym__space);
      ADVANCE_MAP(
        '\t', 748,
        ' ', 748,
        'B', 335,
        'b', 335,
        'C', 929,
        'c', 929,
        'D', 924,
        'd', 924,
        'E', 513,
        'e', 513,
        'F', 337,
        'f', 337,
        'I', 565,
        'i', 565,
        'N', 516,
        'n', 516,
        'P', 380,
        'p', 380,
        'S', 377,
        's', 377,
        'T', 502,
        't', 502,
        'V', 261,
        'v', 261,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(328);
      END_STATE();
    case 750:
      ACCEPT_TOKEN(sym__space);
      ADVANCE_MAP(
        '\t', 748,
        ' ', 748,
        'B', 352,
        'b', 352,
        'C', 547,
        'c', 547,
        'D', 378,
        'd', 378,
        'E', 534,
        'e', 534,
        'F', 348,
        'f', 348,
        'I', 575,
        'i', 575,
        'N', 528,
        'n', 528,
        'P', 408,
        'p', 408,
        'S', 407,
        's', 407,
        'T', 512,
        't', 512,
        'V', 262,
        'v', 262,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(329);
      END_STATE();
    case 751:
      ACCEPT_TOKEN(sym_comment);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead) ||
          (0x0b <= lookahead && lookahead <= '\r') ||
          ('(' <= lookahead && lookahead <= '*') ||
          lookahead == '[' ||
          lookahead == ']') ADVANCE(752);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(751);
      END_STATE();
    case 752:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead != 0 &&
          lookahead != '\n') ADVANCE(752);
      END_STATE();
    case 753:
      ACCEPT_TOKEN(sym_heading);
      if (lookahead != 0 &&
          lookahead != '\n') ADVANCE(753);
      END_STATE();
    case 754:
      ACCEPT_TOKEN(sym_label);
      END_STATE();
    case 755:
      ACCEPT_TOKEN(sym_label);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead) &&
          lookahead != ' ') ADVANCE(1865);
      END_STATE();
    case 756:
      ACCEPT_TOKEN(sym_field);
      END_STATE();
    case 757:
      ACCEPT_TOKEN(sym_count);
      END_STATE();
    case 758:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '\'', 426,
        '/', 274,
        ':', 756,
        'R', 1031,
        'r', 1031,
        'S', 783,
        's', 783,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 759:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '\'', 426,
        ':', 756,
        'R', 1091,
        'r', 1091,
        'S', 806,
        's', 806,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_2, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 760:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '.', 910,
        ':', 756,
        'A', 1110,
        'a', 1110,
        'D', 1077,
        'd', 1077,
        'E', 1138,
        'e', 1138,
        'F', 1136,
        'f', 1136,
        'H', 1085,
        'h', 1085,
        'K', 1136,
        'k', 1136,
        'P', 1136,
        'p', 1136,
        'Q', 1149,
        'q', 1149,
        'R', 1136,
        'r', 1136,
        'S', 785,
        's', 785,
        'T', 1076,
        't', 1076,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 761:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '.', 910,
        ':', 756,
        'H', 819,
        'h', 819,
        'L', 802,
        'l', 802,
        'R', 1071,
        'r', 1071,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 762:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '.') ADVANCE(910);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 763:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '.') ADVANCE(910);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 764:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1025);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 765:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'B', 776,
        'b', 776,
        'C', 768,
        'c', 768,
        'D', 1026,
        'd', 1026,
        'F', 776,
        'f', 776,
        'S', 768,
        's', 768,
        'T', 1049,
        't', 1049,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 766:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'B', 776,
        'b', 776,
        'C', 768,
        'c', 768,
        'F', 776,
        'f', 776,
        'S', 769,
        's', 769,
        'T', 1048,
        't', 1048,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 767:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'B', 776,
        'b', 776,
        'F', 776,
        'f', 776,
        'S', 768,
        's', 768,
        'T', 1049,
        't', 1049,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 768:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'B', 776,
        'b', 776,
        'F', 776,
        'f', 776,
        'S', 769,
        's', 769,
        'T', 1049,
        't', 1049,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 769:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'B', 776,
        'b', 776,
        'F', 776,
        'f', 776,
        'T', 1049,
        't', 1049,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 770:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 1045,
        'e', 1045,
        'O', 1056,
        'o', 1056,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 771:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1068);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 772:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1057);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 773:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 1064,
        'e', 1064,
        'S', 783,
        's', 783,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 774:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'I', 1063,
        'i', 1063,
        'S', 783,
        's', 783,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 775:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1029);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 776:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'P', 781,
        'p', 781,
        'T', 1049,
        't', 1049,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 777:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'R', 768,
        'r', 768,
        'U', 1052,
        'u', 1052,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 778:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'R', 1067,
        'r', 1067,
        'T', 1053,
        't', 1053,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 779:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'S', 783,
        's', 783,
        'U', 1058,
        'u', 1058,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 780:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 781:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1049);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 782:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 783,
        'S', 783,
        'd', 783,
        's', 783,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 783:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 784:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1075);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 785:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 799,
        'b', 799,
        'C', 788,
        'c', 788,
        'D', 1078,
        'd', 1078,
        'F', 799,
        'f', 799,
        'S', 788,
        's', 788,
        'T', 1122,
        't', 1122,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 786:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 799,
        'b', 799,
        'C', 788,
        'c', 788,
        'F', 799,
        'f', 799,
        'S', 789,
        's', 789,
        'T', 1121,
        't', 1121,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 787:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 799,
        'b', 799,
        'F', 799,
        'f', 799,
        'S', 788,
        's', 788,
        'T', 1122,
        't', 1122,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 788:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 799,
        'b', 799,
        'F', 799,
        'f', 799,
        'S', 789,
        's', 789,
        'T', 1122,
        't', 1122,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 789:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'B', 799,
        'b', 799,
        'F', 799,
        'f', 799,
        'T', 1122,
        't', 1122,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 790:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1113);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1133);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 791:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1158);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 792:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'E', 1135,
        'e', 1135,
        'I', 1148,
        'i', 1148,
        'S', 806,
        's', 806,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 793:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1135);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 794:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1135);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 795:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1153);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 796:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1154);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 797:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1155);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 798:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1090);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 799:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(804);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1122);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 800:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(788);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 801:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1156);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1130);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 802:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1141);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 803:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 804:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1122);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 805:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 806:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 807:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 353,
        ' ', 15,
        '-', 360,
        '.', 875,
        ':', 756,
        'C', 788,
        'c', 788,
        'D', 1077,
        'd', 1077,
        'E', 1139,
        'e', 1139,
        'F', 1136,
        'f', 1136,
        'H', 1084,
        'h', 1084,
        'K', 1136,
        'k', 1136,
        'P', 1136,
        'p', 1136,
        'Q', 1149,
        'q', 1149,
        'R', 809,
        'r', 809,
        'S', 1083,
        's', 1083,
        'T', 1076,
        't', 1076,
        'U', 1118,
        'u', 1118,
        'W', 1123,
        'w', 1123,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 808:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 405,
        ' ', 30,
        '/', 274,
        ':', 756,
        'B', 776,
        'b', 776,
        'C', 768,
        'c', 768,
        'E', 1025,
        'e', 1025,
        'F', 776,
        'f', 776,
        'I', 1050,
        'i', 1050,
        'S', 768,
        's', 768,
        'T', 1048,
        't', 1048,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 809:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 405,
        ' ', 30,
        ':', 756,
        'B', 799,
        'b', 799,
        'C', 788,
        'c', 788,
        'E', 1075,
        'e', 1075,
        'F', 799,
        'f', 799,
        'I', 1126,
        'i', 1126,
        'S', 788,
        's', 788,
        'T', 1121,
        't', 1121,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 810:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(405);
      if (lookahead == ' ') ADVANCE(30);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 811:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(598);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(812);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 812:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(598);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 813:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(598);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(814);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 814:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(598);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 815:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(550);
      if (lookahead == ' ') ADVANCE(110);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 816:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(550);
      if (lookahead == ' ') ADVANCE(110);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 817:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 738,
        ' ', 205,
        '/', 274,
        ':', 756,
        'A', 1041,
        'a', 1041,
        'S', 783,
        's', 783,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 818:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(738);
      if (lookahead == ' ') ADVANCE(205);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 819:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(738);
      if (lookahead == ' ') ADVANCE(205);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1107);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 820:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(738);
      if (lookahead == ' ') ADVANCE(205);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 821:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(696);
      if (lookahead == ' ') ADVANCE(192);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(822);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 822:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(696);
      if (lookahead == ' ') ADVANCE(192);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 823:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 824:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 825:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 667,
        ' ', 168,
        '/', 274,
        ':', 756,
        'I', 1051,
        'i', 1051,
        'S', 1062,
        's', 1062,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 826:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(168);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 827:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(168);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1127);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1147);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 828:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(168);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 829:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(426);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1184);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 830:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(426);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1190);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 831:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(426);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1254);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(aux_sym__other_token1_character_set_2, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 832:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(426);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1264);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(aux_sym__other_token1_character_set_2, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 833:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '-', 360,
        '.', 875,
        ':', 756,
        '\t', 366,
        ' ', 366,
        'C', 891,
        'c', 891,
        'D', 1239,
        'd', 1239,
        'E', 1304,
        'e', 1304,
        'F', 1301,
        'f', 1301,
        'H', 1246,
        'h', 1246,
        'K', 1301,
        'k', 1301,
        'P', 1301,
        'p', 1301,
        'Q', 1316,
        'q', 1316,
        'R', 878,
        'r', 878,
        'S', 1245,
        's', 1245,
        'T', 1238,
        't', 1238,
        'U', 1284,
        'u', 1284,
        'W', 1286,
        'w', 1286,
      );
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 834:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '-', 360,
        '.', 875,
        '\t', 366,
        ' ', 366,
        'C', 891,
        'c', 891,
        'D', 1239,
        'd', 1239,
        'E', 1304,
        'e', 1304,
        'F', 1301,
        'f', 1301,
        'H', 1246,
        'h', 1246,
        'K', 1301,
        'k', 1301,
        'P', 1301,
        'p', 1301,
        'Q', 1316,
        'q', 1316,
        'R', 878,
        'r', 878,
        'S', 1245,
        's', 1245,
        'T', 1238,
        't', 1238,
        'U', 1284,
        'u', 1284,
        'W', 1286,
        'w', 1286,
      );
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 835:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 836:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 837:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '.', 910,
        ':', 756,
        'A', 1275,
        'a', 1275,
        'D', 1239,
        'd', 1239,
        'E', 1303,
        'e', 1303,
        'F', 1301,
        'f', 1301,
        'H', 1247,
        'h', 1247,
        'K', 1301,
        'k', 1301,
        'P', 1301,
        'p', 1301,
        'Q', 1316,
        'q', 1316,
        'R', 1301,
        'r', 1301,
        'S', 888,
        's', 888,
        'T', 1238,
        't', 1238,
      );
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 838:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '.', 910,
        ':', 756,
        'H', 876,
        'h', 876,
        'L', 906,
        'l', 906,
        'R', 1232,
        'r', 1232,
      );
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 839:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(910);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(879);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 840:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(910);
      if (lookahead == ':') ADVANCE(756);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 841:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '.', 910,
        'A', 1275,
        'a', 1275,
        'D', 1239,
        'd', 1239,
        'E', 1303,
        'e', 1303,
        'F', 1301,
        'f', 1301,
        'H', 1247,
        'h', 1247,
        'K', 1301,
        'k', 1301,
        'P', 1301,
        'p', 1301,
        'Q', 1316,
        'q', 1316,
        'R', 1301,
        'r', 1301,
        'S', 888,
        's', 888,
        'T', 1238,
        't', 1238,
      );
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 842:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(910);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(876);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(906);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1232);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 843:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(910);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(879);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 844:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(910);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1327);
      END_STATE();
    case 845:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(737);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1196);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 846:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(737);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 847:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 274,
        '\t', 385,
        ' ', 385,
        'B', 866,
        'b', 866,
        'C', 857,
        'c', 857,
        'E', 1178,
        'e', 1178,
        'F', 866,
        'f', 866,
        'I', 1206,
        'i', 1206,
        'S', 857,
        's', 857,
        'T', 1203,
        't', 1203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 848:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(605);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(849);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 849:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(605);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 850:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(561);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 851:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1205);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1217);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 852:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 853:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1178);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 854:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 274,
        'B', 866,
        'b', 866,
        'C', 857,
        'c', 857,
        'D', 1179,
        'd', 1179,
        'F', 866,
        'f', 866,
        'S', 857,
        's', 857,
        'T', 1204,
        't', 1204,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 855:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 274,
        'B', 866,
        'b', 866,
        'C', 857,
        'c', 857,
        'F', 866,
        'f', 866,
        'S', 858,
        's', 858,
        'T', 1203,
        't', 1203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 856:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 274,
        'B', 866,
        'b', 866,
        'F', 866,
        'f', 866,
        'S', 857,
        's', 857,
        'T', 1204,
        't', 1204,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 857:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 274,
        'B', 866,
        'b', 866,
        'F', 866,
        'f', 866,
        'S', 858,
        's', 858,
        'T', 1204,
        't', 1204,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 858:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(866);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(866);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1204);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 859:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(873);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 860:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1200);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1211);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 861:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1225);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 862:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1212);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 863:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1220);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 864:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1221);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 865:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1182);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 866:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(871);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1204);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 867:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(857);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1207);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 868:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1224);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1208);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 869:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1213);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 870:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 871:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1204);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 872:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 873:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 874:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == ':') ADVANCE(756);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 875:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(730);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 876:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(737);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1272);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 877:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(737);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 878:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 385,
        ' ', 385,
        'B', 903,
        'b', 903,
        'C', 891,
        'c', 891,
        'E', 1237,
        'e', 1237,
        'F', 903,
        'f', 903,
        'I', 1291,
        'i', 1291,
        'S', 891,
        's', 891,
        'T', 1287,
        't', 1287,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 879:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(385);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 880:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(605);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(881);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 881:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(605);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 882:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(561);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 883:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(712);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(884);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 884:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(712);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 885:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1292);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1312);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 886:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 887:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1237);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 888:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 903,
        'b', 903,
        'C', 891,
        'c', 891,
        'D', 1240,
        'd', 1240,
        'F', 903,
        'f', 903,
        'S', 891,
        's', 891,
        'T', 1288,
        't', 1288,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 889:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 903,
        'b', 903,
        'C', 891,
        'c', 891,
        'F', 903,
        'f', 903,
        'S', 892,
        's', 892,
        'T', 1287,
        't', 1287,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 890:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 903,
        'b', 903,
        'F', 903,
        'f', 903,
        'S', 891,
        's', 891,
        'T', 1288,
        't', 1288,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 891:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 903,
        'b', 903,
        'F', 903,
        'f', 903,
        'S', 892,
        's', 892,
        'T', 1288,
        't', 1288,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 892:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(903);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(903);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1288);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 893:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(910);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 894:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1278);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1298);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 895:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1326);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 896:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1300);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1315);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 897:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1300);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 898:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1300);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 899:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1320);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 900:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1321);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 901:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1322);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 902:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1252);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 903:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(908);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1288);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 904:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(891);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1293);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 905:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1323);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1295);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 906:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1306);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 907:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 908:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1288);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 909:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 910:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 911:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      END_STATE();
    case 912:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 384,
        ' ', 384,
        'B', 1759,
        'b', 1759,
        'C', 857,
        'c', 857,
        'E', 1664,
        'e', 1664,
        'O', 1852,
        'o', 1852,
        'T', 1810,
        't', 1810,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 913:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(631);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 914:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '/', 274,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 915:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '/', 274,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 1690,
        's', 1690,
        'T', 1657,
        't', 1657,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 916:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1821);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 917:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1850);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(921);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 918:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '/', 274,
        'H', 845,
        'h', 845,
        'L', 869,
        'l', 869,
        'O', 1785,
        'o', 1785,
        'R', 1636,
        'r', 1636,
        'U', 1836,
        'u', 1836,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 919:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1847);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(921);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1725);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 920:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(921);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 921:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 922:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(637);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(989);
      END_STATE();
    case 923:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(937);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 924:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(934);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(939);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(987);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 925:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(934);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(937);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(965);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 926:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(972);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 927:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(984);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 928:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(980);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 929:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(931);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(963);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 930:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(946);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 931:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(934);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(975);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 932:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 933:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(911);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      END_STATE();
    case 934:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 935:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(976);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 936:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(977);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 937:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(961);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 938:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(962);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 939:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(930);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 940:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(956);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 941:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(971);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 942:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(955);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 943:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(959);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 944:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(958);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 945:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(932);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 946:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(935);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 947:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(969);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 948:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(967);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 949:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(970);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 950:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(974);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 951:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(979);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 952:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(968);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 953:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(982);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 954:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(936);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 955:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(926);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 956:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(951);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 957:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(948);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 958:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(950);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 959:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(953);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 960:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(952);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 961:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(945);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 962:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(950);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 963:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(940);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 964:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(943);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 965:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(961);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 966:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(962);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 967:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 968:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 969:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(932);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 970:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(974);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 971:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(954);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 972:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 973:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(978);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 974:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(989);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 975:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(981);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 976:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(945);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 977:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(950);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 978:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(983);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 979:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(932);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 980:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(942);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 981:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(947);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 982:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(974);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 983:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(949);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 984:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(957);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 985:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(960);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 986:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(944);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 987:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(937);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 988:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 989:
      ACCEPT_TOKEN(sym__no_more);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(989);
      END_STATE();
    case 990:
      ACCEPT_TOKEN(sym_action);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 1329,
        'e', 1329,
        'S', 998,
        's', 998,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 991:
      ACCEPT_TOKEN(sym_action);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 1331,
        'e', 1331,
        'I', 1341,
        'i', 1341,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 992:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1331);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 993:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1344);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 994:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1335);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 995:
      ACCEPT_TOKEN(sym_action);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'R', 1348,
        'r', 1348,
        'U', 1339,
        'u', 1339,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 996:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 997:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 998:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 999:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1350);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1389);
      END_STATE();
    case 1000:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(515);
      if (lookahead == ' ') ADVANCE(98);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1001:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(626);
      if (lookahead == ' ') ADVANCE(152);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1002:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(601);
      if (lookahead == ' ') ADVANCE(140);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1333);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1003:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(601);
      if (lookahead == ' ') ADVANCE(140);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1004:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(628);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1005:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(614);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1366);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1006:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(614);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1007:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(522);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1008:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1360);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1009:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1363);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1376);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1010:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1363);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1011:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1381);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1012:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1368);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1013:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1386);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1373);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1014:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1386);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1377);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1015:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1016:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1017:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1018:
      ACCEPT_TOKEN(sym_action);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1389);
      END_STATE();
    case 1019:
      ACCEPT_TOKEN(sym_bracket);
      END_STATE();
    case 1020:
      ACCEPT_TOKEN(sym_bracket);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(315);
      END_STATE();
    case 1021:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(734);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(703);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1391);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1022);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1022:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(734);
      if (lookahead == '/') ADVANCE(274);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1022);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1023:
      ACCEPT_TOKEN(sym_number);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1023);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1393);
      END_STATE();
    case 1024:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1059);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1025:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1044);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1026:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(768);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1027:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1038);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1028:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1039);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1029:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1030:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1031:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1024);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1032:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(782);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1033:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(997);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1034:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1054);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1035:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1055);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1036:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1037:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1033);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1038:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(772);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1039:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(771);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1040:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1035);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1041:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'I', 1047,
        'i', 1047,
        'N', 1037,
        'n', 1037,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1042:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1066);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1043:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1044:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1029);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1045:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1043);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1046:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1030);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1047:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(818);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1048:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'O', 1036,
        'o', 1036,
        'R', 768,
        'r', 768,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1049:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1036);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1050:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(775);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1051:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1169);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1052:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1046);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1053:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(768);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1054:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1055:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1056:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1060);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1057:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1058:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1065);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1059:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1032);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1060:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1164);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1061:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1042);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1062:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(774);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1063:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1027);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1064:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1040);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1065:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1034);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1066:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1028);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1067:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1052);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1068:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 783,
        'S', 783,
        'd', 783,
        's', 783,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1069:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1070:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1087);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1119);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1071:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1074);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1079);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1072:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1120);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1073:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1142);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1074:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(828);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1075:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1114);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1076:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'C', 788,
        'c', 788,
        'R', 786,
        'r', 786,
        'T', 1130,
        't', 1130,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1077:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(788);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1130);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1078:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1079:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1105);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1137);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1080:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1103);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1081:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1102);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1082:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1104);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1083:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 1078,
        'd', 1078,
        'L', 1167,
        'l', 1167,
        'C', 788,
        'S', 788,
        'c', 788,
        's', 788,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1084:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'D', 1078,
        'd', 1078,
        'R', 1096,
        'r', 1096,
        'T', 1157,
        't', 1157,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1085:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1078);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1157);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1086:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1166);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1087:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1150);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1088:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1168);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1089:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1090:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1091:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1073);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1092:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1166);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1093:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(805);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1094:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1160);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1095:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1131);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1096:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1094);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1097:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1129);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1098:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1145);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1099:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1088);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1100:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1101:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(795);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1102:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(794);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1103:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(793);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1104:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(791);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1105:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1098);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1106:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1097);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1107:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1117);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1108:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1072);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1109:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1140);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1110:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1143);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1111:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1155);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1112:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1113:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1112);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1114:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1090);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1115:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1089);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1116:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1163);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1117:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(820);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1118:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1109);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1119:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1150);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1120:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1162);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1121:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1100);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1122:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1100);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1123:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1160);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1124:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1101);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1125:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(806);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1132);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1126:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(798);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1127:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1170);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1128:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1115);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1129:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1130:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1131:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1132:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1116);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1133:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1146);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1134:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1144);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1135:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1136:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1137:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1165);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1138:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        ':', 756,
        'S', 787,
        's', 787,
        'T', 1125,
        't', 1125,
        'V', 1161,
        'v', 1161,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1139:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1140:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1108);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1141:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1152);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1142:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1093);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1143:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1099);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1144:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1092);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1145:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(803);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1146:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1166);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1147:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(796);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1148:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1080);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1149:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1130);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1070);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1150:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1130);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1151:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1111);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1152:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1095);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1153:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1106);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1154:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1081);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1155:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1082);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1156:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1157:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(788);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1158:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(806);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1159:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1160:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(695);
      if (lookahead == ' ') ADVANCE(188);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1124);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1161:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(355);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1134);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1162:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(355);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1163:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(626);
      if (lookahead == ' ') ADVANCE(152);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1164:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1165:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1086);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1166:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1167:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(168);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1147);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1168:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(374);
      if (lookahead == ' ') ADVANCE(26);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1169:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(681);
      if (lookahead == ' ') ADVANCE(177);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1061);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1069);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1170:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(681);
      if (lookahead == ' ') ADVANCE(177);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1151);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1159);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1171:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1172:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1248);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1173:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1174:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(375);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1175:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(682);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1219);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1176:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1214);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1177:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1215);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1178:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1199);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1179:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1180:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1193);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1181:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1194);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1182:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1183:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1184:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1176);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1185:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(859);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1186:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(872);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1187:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1016);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1188:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1209);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1189:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1210);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1190:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1177);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1191:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1192:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1187);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1193:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(862);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1194:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1195:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1189);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1196:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1202);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1192);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1197:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1223);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1198:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1199:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1182);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1200:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1198);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1201:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1183);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1202:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(846);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1203:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1191);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1204:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1191);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1205:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1175);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1206:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(865);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1207:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1201);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1208:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1209:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1210:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1211:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1218);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1212:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1213:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1222);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1214:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1185);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1215:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1186);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1216:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1204);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1217:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(864);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1218:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1171);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1219:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1197);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1220:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1195);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1221:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1180);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1222:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1188);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1223:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1181);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1224:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1207);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1225:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1226:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1226);
      END_STATE();
    case 1227:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(703);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1289);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1228:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(628);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1229:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1312);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1230:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(682);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1231:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1250);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1285);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1232:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1236);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1241);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1233:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1282);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1234:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1307);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1235:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1309);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1236:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(886);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1237:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1279);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1238:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(891);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(889);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1295);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1239:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(891);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1295);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1240:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(891);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1241:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1270);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1302);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1242:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1268);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1243:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1267);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1244:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1269);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1245:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        'D', 1240,
        'd', 1240,
        'L', 1229,
        'l', 1229,
        'C', 891,
        'S', 891,
        'c', 891,
        's', 891,
      );
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1246:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1240);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1259);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1325);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1247:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1240);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1325);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1248:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1173);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1249:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1174);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1250:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1317);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1251:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1252:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(907);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1253:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1227);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1254:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1234);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1255:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1173);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1256:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(909);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1257:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(893);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1258:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1296);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1259:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1253);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1260:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1249);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1261:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1294);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1262:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1299);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1263:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1311);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1264:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1235);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1265:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(907);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1266:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(899);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1267:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(898);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1268:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(897);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1269:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(895);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1270:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1263);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1271:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1261);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1272:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1281);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1273:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1233);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1274:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1305);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1275:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1308);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1276:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1322);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1277:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(907);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1278:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1277);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1279:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1252);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1280:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1251);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1281:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(877);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1282:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1324);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1283:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1228);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1284:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1274);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1285:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1317);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1286:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1227);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1287:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1265);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(891);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1288:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1265);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1289:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1266);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1290:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(910);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1297);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1291:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(902);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1292:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1230);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1293:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1280);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1294:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1295:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(891);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1296:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(907);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1297:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1283);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1298:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1313);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1299:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1310);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1300:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1301:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(891);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1302:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1172);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1303:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(890);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1290);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1262);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1304:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(890);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1305:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1273);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1306:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1319);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1307:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1256);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1308:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1260);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1309:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1257);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1310:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1255);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1311:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(907);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1312:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(900);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1313:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1173);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1314:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1288);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1315:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1242);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1316:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1295);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1231);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1317:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1295);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1318:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1276);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1319:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1258);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1320:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1271);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1321:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1243);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1322:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1244);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1323:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1293);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1324:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1325:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(891);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1326:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(910);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1327:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1327);
      END_STATE();
    case 1328:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1345);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1329:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1346);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1330:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1347);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1331:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1332:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1353);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1333:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1003);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1334:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1330);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1335:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1331);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1336:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(773);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1337:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1352);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1338:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1343);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1339:
      ACCEPT_TOKEN(aux_sym__other_token2);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'N', 1334,
        'n', 1334,
        'R', 1351,
        'r', 1351,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1340:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1354);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1341:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1337);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1342:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1336);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1343:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1340);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1344:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(994);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1345:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1332);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1346:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(996);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1347:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1338);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1348:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1328);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1349:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1350:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1350);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1389);
      END_STATE();
    case 1351:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(695);
      if (lookahead == ' ') ADVANCE(188);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1342);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1352:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(645);
      if (lookahead == ' ') ADVANCE(158);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1353:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(626);
      if (lookahead == ' ') ADVANCE(152);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1354:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(357);
      if (lookahead == ' ') ADVANCE(19);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1349);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1355:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(362);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1356:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(703);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1378);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1357:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(644);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1358:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(628);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1359:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1382);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1360:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1383);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1361:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1384);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1362:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1385);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1363:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1364:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1358);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1365:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1361);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1366:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1006);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1367:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1362);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1368:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1363);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1369:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(863);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1370:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1357);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1371:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1379);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1372:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1380);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1373:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1365);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1356);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1374:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1355);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1375:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1387);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1376:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1370);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1377:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1367);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1356);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1378:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1369);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1379:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1374);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1380:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1375);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1381:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1012);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1382:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1364);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1383:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1015);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1384:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1371);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1385:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1372);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1386:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1359);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1387:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1388:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1388);
      END_STATE();
    case 1389:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1389);
      END_STATE();
    case 1390:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(863);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1391:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1390);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1392:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1393:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1393);
      END_STATE();
    case 1394:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '-') ADVANCE(718);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1534);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1395:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1418,
        'a', 1418,
        'O', 764,
        'o', 764,
        'P', 1597,
        'p', 1597,
        'R', 1451,
        'r', 1451,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1396:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1488,
        'a', 1488,
        'I', 1552,
        'i', 1552,
        'O', 1538,
        'o', 1538,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1397:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1407,
        'a', 1407,
        'O', 1419,
        'o', 1419,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1398:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1421);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1399:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1504,
        'a', 1504,
        'D', 1412,
        'd', 1412,
        'E', 1548,
        'e', 1548,
        'F', 1544,
        'f', 1544,
        'H', 1433,
        'h', 1433,
        'I', 1577,
        'i', 1577,
        'K', 1544,
        'k', 1544,
        'O', 995,
        'o', 995,
        'P', 1596,
        'p', 1596,
        'Q', 1557,
        'q', 1557,
        'R', 1529,
        'r', 1529,
        'S', 765,
        's', 765,
        'T', 1411,
        't', 1411,
        'U', 1494,
        'u', 1494,
        'W', 1430,
        'w', 1430,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1400:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1576);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1401:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1429,
        'a', 1429,
        'I', 1521,
        'i', 1521,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1402:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1551,
        'a', 1551,
        'E', 1400,
        'e', 1400,
        'I', 1524,
        'i', 1524,
        'O', 1510,
        'o', 1510,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1403:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'A', 1435,
        'a', 1435,
        'I', 1522,
        'i', 1522,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1404:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1485);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1405:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1578);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1406:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1502);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1407:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(826);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1408:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1495);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1409:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1499);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1410:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'R', 766,
        'r', 766,
        'S', 1546,
        's', 1546,
        'T', 1537,
        't', 1537,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1411:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'R', 766,
        'r', 766,
        'T', 1537,
        't', 1537,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1412:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'T', 1537,
        't', 1537,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1413:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(768);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1414:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 780,
        'c', 780,
        'I', 1417,
        'i', 1417,
        'L', 1398,
        'l', 1398,
        'M', 998,
        'm', 998,
        'O', 1535,
        'o', 1535,
        'S', 768,
        's', 768,
        'U', 1463,
        'u', 1463,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1415:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 758,
        'c', 758,
        'V', 1598,
        'v', 1598,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1416:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(758);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1417:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 1528,
        'c', 1528,
        'E', 1424,
        'e', 1424,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1418:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1487);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1419:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 1474,
        'c', 1474,
        'S', 1549,
        's', 1549,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1420:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1530);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1421:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 1443,
        'c', 1443,
        'I', 1523,
        'i', 1523,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1422:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1443);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1423:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1472);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1424:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1450);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1425:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1600);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1426:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1412,
        'd', 1412,
        'E', 1548,
        'e', 1548,
        'F', 1544,
        'f', 1544,
        'H', 1433,
        'h', 1433,
        'I', 1467,
        'i', 1467,
        'K', 1544,
        'k', 1544,
        'P', 1544,
        'p', 1544,
        'Q', 1557,
        'q', 1557,
        'R', 1544,
        'r', 1544,
        'S', 765,
        's', 765,
        'T', 1410,
        't', 1410,
        'X', 1427,
        'x', 1427,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1427:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1412,
        'd', 1412,
        'E', 1548,
        'e', 1548,
        'F', 1544,
        'f', 1544,
        'H', 1433,
        'h', 1433,
        'K', 1544,
        'k', 1544,
        'P', 1544,
        'p', 1544,
        'Q', 1557,
        'q', 1557,
        'R', 1544,
        'r', 1544,
        'S', 1434,
        's', 1434,
        'T', 1595,
        't', 1595,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1428:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1586);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1429:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(778);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1430:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1532,
        'd', 1532,
        'P', 783,
        'p', 783,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1431:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1413,
        'd', 1413,
        'L', 1604,
        'l', 1604,
        'C', 768,
        'S', 768,
        'c', 768,
        's', 768,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1432:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1413,
        'd', 1413,
        'R', 1446,
        'r', 1446,
        'T', 1580,
        't', 1580,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1433:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1413,
        'd', 1413,
        'T', 1580,
        't', 1580,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1434:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'D', 1413,
        'd', 1413,
        'C', 768,
        'S', 768,
        'c', 768,
        's', 768,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1435:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1558);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1436:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1602);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1437:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1458);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1438:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1605);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1439:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1600);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1440:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 1579,
        'e', 1579,
        'I', 1509,
        'i', 1509,
        'O', 1560,
        'o', 1560,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1441:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1442:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 998,
        'e', 998,
        'I', 1518,
        'i', 1518,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1443:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1444:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(823);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1445:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1416);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1446:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1454);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1447:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1559);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1448:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1000);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1449:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'E', 1405,
        'e', 1405,
        'O', 1539,
        'o', 1539,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1450:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1594);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1451:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1404);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1452:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(815);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1453:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1425);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1454:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1591);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1455:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1545);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1456:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1512);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1457:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1602);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1458:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1436);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1459:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1519);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1460:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1438);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1461:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1462:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1463:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'F', 1461,
        'f', 1461,
        'R', 1491,
        'r', 1491,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1464:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1462);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1465:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1603);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1466:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1467:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1473);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1468:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(773);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1469:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1602);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1470:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1497);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1471:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'H', 817,
        'h', 817,
        'L', 779,
        'l', 779,
        'O', 1513,
        'o', 1513,
        'R', 1397,
        'r', 1397,
        'U', 1560,
        'u', 1560,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1472:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1473:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1570);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1474:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1447);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1475:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'I', 1422,
        'i', 1422,
        'O', 1591,
        'o', 1591,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1476:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1565);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1477:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1406);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1478:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1507);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1479:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1555);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1480:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1568);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1481:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1514);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1482:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1553);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1483:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1490);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1484:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1409);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1485:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1486:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(992);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1487:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1592);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1488:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1443);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1489:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1453);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1490:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1444);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1491:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1492:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1493:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1465);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1494:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1498);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1495:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1452);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1496:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1457);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1497:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1441);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1498:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1602);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1499:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1439);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1500:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'M', 1536,
        'm', 1536,
        'N', 1470,
        'n', 1470,
        'X', 1591,
        'x', 1591,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1501:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(1455);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1502:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1600);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1503:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1415);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1504:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'N', 780,
        'n', 780,
        'S', 1569,
        's', 1569,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1505:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1506:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1428);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1507:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(991);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1508:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(992);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1509:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1454);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1510:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1469);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1511:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'N', 1476,
        'n', 1476,
        'S', 768,
        's', 768,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1512:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1513:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1571);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1514:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1573);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1515:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1422);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1516:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1001);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1517:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1437);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1518:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1466);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1519:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1591);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1520:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1563);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1521:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1562);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1522:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1558);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1523:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1602);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1524:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1489);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1525:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'N', 1482,
        'n', 1482,
        'R', 1508,
        'r', 1508,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1526:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1478);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1527:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1468);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1528:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1567);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1529:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'O', 1520,
        'o', 1520,
        'S', 768,
        's', 768,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1530:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1541);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1531:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'P', 783,
        'p', 783,
        'U', 1540,
        'u', 1540,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1532:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1533:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'P', 990,
        'p', 990,
        'S', 767,
        's', 767,
        'T', 1531,
        't', 1531,
        'V', 1599,
        'v', 1599,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1534:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1593);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1535:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1420);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1536:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1496);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1537:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(768);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1538:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'R', 1443,
        'r', 1443,
        'V', 1443,
        'v', 1443,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1539:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1486);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1540:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1516);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1541:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1505);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1542:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1554);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1543:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'S', 768,
        's', 768,
        'T', 998,
        't', 998,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1544:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(768);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1545:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1546:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(783);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1547:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(992);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1548:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(767);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1549:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1601);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1550:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1484);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1551:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1566);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1552:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1547);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1553:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1477);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1554:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1457);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1555:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1460);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1556:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'T', 1537,
        't', 1537,
        'U', 1401,
        'u', 1401,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1557:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'T', 1537,
        't', 1537,
        'U', 1403,
        'u', 1403,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1558:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1537);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1559:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(780);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1560:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1561:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'T', 1394,
        't', 1394,
        'V', 1459,
        'v', 1459,
        'W', 998,
        'w', 998,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1562:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(777);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1563:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1592);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1564:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(774);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1565:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(826);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1566:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1593);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1567:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(811);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1568:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1423);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1569:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1456);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1570:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1591);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1571:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1481);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1572:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1408);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1573:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1443);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1574:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1464);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1575:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'U', 1506,
        'u', 1506,
        'W', 1586,
        'w', 1586,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1576:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1442);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1577:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1454);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1578:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1448);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1579:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(1566);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1580:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 739,
        ' ', 203,
        '/', 274,
        ':', 756,
        'C', 768,
        'R', 768,
        'c', 768,
        'r', 768,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1581:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(739);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1582:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 404,
        ' ', 29,
        '.', 316,
        '/', 274,
        ':', 756,
        'B', 1492,
        'b', 1492,
        'C', 768,
        'c', 768,
        'E', 1416,
        'e', 1416,
        'O', 1572,
        'o', 1572,
        'T', 1537,
        't', 1537,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1583:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 402,
        ' ', 27,
        '.', 316,
        '/', 274,
        ':', 756,
        'A', 1493,
        'a', 1493,
        'D', 1413,
        'd', 1413,
        'T', 1580,
        't', 1580,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1584:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 732,
        ' ', 202,
        '.', 313,
        '/', 274,
        ':', 756,
        'A', 1479,
        'a', 1479,
        'D', 1585,
        'd', 1585,
        'E', 1533,
        'e', 1533,
        'F', 1544,
        'f', 1544,
        'H', 1433,
        'h', 1433,
        'K', 1544,
        'k', 1544,
        'N', 1428,
        'n', 1428,
        'O', 1575,
        'o', 1575,
        'P', 1543,
        'p', 1543,
        'Q', 1557,
        'q', 1557,
        'R', 1544,
        'r', 1544,
        'S', 765,
        's', 765,
        'T', 1411,
        't', 1411,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1585:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 732,
        ' ', 202,
        '.', 313,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'S', 1587,
        's', 1587,
        'T', 1537,
        't', 1537,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1586:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(732);
      if (lookahead == ' ') ADVANCE(202);
      if (lookahead == '.') ADVANCE(313);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1587);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1587:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(732);
      if (lookahead == ' ') ADVANCE(202);
      if (lookahead == '.') ADVANCE(313);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1588:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 436,
        ' ', 50,
        '.', 316,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'D', 1413,
        'd', 1413,
        'E', 1561,
        'e', 1561,
        'H', 770,
        'h', 770,
        'I', 1500,
        'i', 1500,
        'K', 993,
        'k', 993,
        'L', 825,
        'l', 825,
        'P', 1483,
        'p', 1483,
        'S', 768,
        's', 768,
        'T', 1574,
        't', 1574,
        'W', 1480,
        'w', 1480,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1589:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 353,
        ' ', 15,
        '-', 360,
        '.', 316,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'D', 1412,
        'd', 1412,
        'E', 1548,
        'e', 1548,
        'F', 1544,
        'f', 1544,
        'H', 1432,
        'h', 1432,
        'I', 1501,
        'i', 1501,
        'K', 1544,
        'k', 1544,
        'P', 1544,
        'p', 1544,
        'Q', 1557,
        'q', 1557,
        'R', 808,
        'r', 808,
        'S', 1431,
        's', 1431,
        'T', 1411,
        't', 1411,
        'U', 1525,
        'u', 1525,
        'W', 1475,
        'w', 1475,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1590:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(663);
      if (lookahead == ' ') ADVANCE(165);
      if (lookahead == '-') ADVANCE(668);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1559);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1591:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(695);
      if (lookahead == ' ') ADVANCE(188);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1527);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1592:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(627);
      if (lookahead == ' ') ADVANCE(151);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1593:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(645);
      if (lookahead == ' ') ADVANCE(158);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1594:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(278);
      if (lookahead == ' ') ADVANCE(216);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(753);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1595:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        '/', 274,
        ':', 756,
        'C', 768,
        'c', 768,
        'E', 1517,
        'e', 1517,
        'R', 766,
        'r', 766,
        'T', 1537,
        't', 1537,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1596:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        '/', 274,
        ':', 756,
        'D', 1412,
        'd', 1412,
        'E', 1548,
        'e', 1548,
        'F', 1544,
        'f', 1544,
        'H', 1433,
        'h', 1433,
        'K', 1544,
        'k', 1544,
        'P', 1544,
        'p', 1544,
        'Q', 1557,
        'q', 1557,
        'R', 1544,
        'r', 1544,
        'S', 765,
        's', 765,
        'T', 1411,
        't', 1411,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1597:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        '/', 274,
        ':', 756,
        'D', 1412,
        'd', 1412,
        'E', 1548,
        'e', 1548,
        'F', 1544,
        'f', 1544,
        'H', 1433,
        'h', 1433,
        'K', 1544,
        'k', 1544,
        'P', 1544,
        'p', 1544,
        'Q', 1557,
        'q', 1557,
        'R', 1544,
        'r', 1544,
        'S', 1434,
        's', 1434,
        'T', 1411,
        't', 1411,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1598:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 355,
        ' ', 17,
        '-', 360,
        '/', 274,
        ':', 756,
        'D', 1445,
        'd', 1445,
        'I', 1550,
        'i', 1550,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1599:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(355);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1542);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1600:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(355);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1601:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1436);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1602:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(356);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1603:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(21);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1604:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(168);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1564);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1605:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(374);
      if (lookahead == ' ') ADVANCE(26);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(756);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1581);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1606:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '(') ADVANCE(1865);
      if (lookahead == ')') ADVANCE(1864);
      if (lookahead == '\t' ||
          (0x0b <= lookahead && lookahead <= '\r') ||
          lookahead == ' ') ADVANCE(243);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1606);
      END_STATE();
    case 1607:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '(') ADVANCE(243);
      if (lookahead == '/') ADVANCE(238);
      if (lookahead == ':') ADVANCE(754);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(239);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1607);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')' &&
          (lookahead < '.' || ':' < lookahead)) ADVANCE(239);
      END_STATE();
    case 1608:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '(') ADVANCE(1606);
      if (lookahead == ':') ADVANCE(755);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(239);
      if (lookahead == ')' ||
          lookahead == '.') ADVANCE(1865);
      if ((0x0b <= lookahead && lookahead <= '\r')) ADVANCE(239);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1608);
      END_STATE();
    case 1609:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '-', 360,
        '.', 316,
        '/', 274,
        '\t', 366,
        ' ', 366,
        'C', 857,
        'c', 857,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1688,
        'h', 1688,
        'I', 1769,
        'i', 1769,
        'K', 1818,
        'k', 1818,
        'O', 1728,
        'o', 1728,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 847,
        'r', 847,
        'S', 1687,
        's', 1687,
        'T', 1657,
        't', 1657,
        'U', 1795,
        'u', 1795,
        'W', 1738,
        'w', 1738,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1610:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '-', 360,
        '.', 316,
        '/', 274,
        '\t', 366,
        ' ', 366,
        'C', 857,
        'c', 857,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1688,
        'h', 1688,
        'I', 1769,
        'i', 1769,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 847,
        'r', 847,
        'S', 1687,
        's', 1687,
        'T', 1657,
        't', 1657,
        'U', 1795,
        'u', 1795,
        'W', 1738,
        'w', 1738,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1611:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1685);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1612:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(361);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1613:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1614:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(375);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1615:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '-', 360,
        '/', 274,
        '\t', 365,
        ' ', 365,
        'D', 1720,
        'd', 1720,
        'I', 1825,
        'i', 1825,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1616:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(360);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(365);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1617:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(668);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(669);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1835);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1618:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(718);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1806);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1619:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 384,
        ' ', 384,
        'B', 1759,
        'b', 1759,
        'C', 857,
        'c', 857,
        'E', 1677,
        'e', 1677,
        'O', 1852,
        'o', 1852,
        'T', 1810,
        't', 1810,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1620:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 381,
        ' ', 381,
        'A', 1760,
        'a', 1760,
        'D', 1659,
        'd', 1659,
        'T', 1862,
        't', 1862,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1621:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 431,
        ' ', 431,
        'C', 857,
        'c', 857,
        'D', 1659,
        'd', 1659,
        'E', 1837,
        'e', 1837,
        'H', 860,
        'h', 860,
        'I', 1768,
        'i', 1768,
        'K', 1011,
        'k', 1011,
        'L', 851,
        'l', 851,
        'P', 1748,
        'p', 1748,
        'S', 857,
        's', 857,
        'T', 919,
        't', 919,
        'W', 1745,
        'w', 1745,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1622:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 431,
        ' ', 431,
        'C', 857,
        'c', 857,
        'D', 1659,
        'd', 1659,
        'E', 1837,
        'e', 1837,
        'H', 860,
        'h', 860,
        'I', 1768,
        'i', 1768,
        'K', 1011,
        'k', 1011,
        'L', 851,
        'l', 851,
        'P', 1748,
        'p', 1748,
        'S', 857,
        's', 857,
        'T', 1854,
        't', 1854,
        'W', 1745,
        'w', 1745,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1623:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 431,
        ' ', 431,
        'C', 857,
        'c', 857,
        'D', 1659,
        'd', 1659,
        'E', 1858,
        'e', 1858,
        'H', 860,
        'h', 860,
        'I', 1768,
        'i', 1768,
        'K', 1011,
        'k', 1011,
        'L', 851,
        'l', 851,
        'P', 1748,
        'p', 1748,
        'S', 857,
        's', 857,
        'T', 919,
        't', 919,
        'W', 1745,
        'w', 1745,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1624:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 316,
        '/', 274,
        '\t', 431,
        ' ', 431,
        'C', 857,
        'c', 857,
        'D', 1659,
        'd', 1659,
        'E', 1858,
        'e', 1858,
        'H', 860,
        'h', 860,
        'I', 1768,
        'i', 1768,
        'K', 1011,
        'k', 1011,
        'L', 851,
        'l', 851,
        'P', 1748,
        'p', 1748,
        'S', 857,
        's', 857,
        'T', 1854,
        't', 1854,
        'W', 1745,
        'w', 1745,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1625:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 313,
        '/', 274,
        '\t', 731,
        ' ', 731,
        'A', 1743,
        'a', 1743,
        'D', 1626,
        'd', 1626,
        'E', 1805,
        'e', 1805,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'N', 1684,
        'n', 1684,
        'O', 1855,
        'o', 1855,
        'P', 1817,
        'p', 1817,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1626:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 313,
        '/', 274,
        '\t', 731,
        ' ', 731,
        'C', 857,
        'c', 857,
        'S', 1628,
        's', 1628,
        'T', 1810,
        't', 1810,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1627:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '.') ADVANCE(313);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(731);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1628);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1628:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '.') ADVANCE(313);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(731);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1607);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1629:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == ':') ADVANCE(753);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1630:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(703);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1797);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1631:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(644);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1632:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(671);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1843);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1633:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(638);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1634:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1667,
        'a', 1667,
        'O', 853,
        'o', 853,
        'P', 915,
        'p', 915,
        'R', 1711,
        'r', 1711,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1635:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1755);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1827);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1812);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1636:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1651);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1668);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1637:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1670);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1638:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1772,
        'a', 1772,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'I', 1857,
        'i', 1857,
        'K', 1818,
        'k', 1818,
        'O', 1013,
        'o', 1013,
        'P', 914,
        'p', 914,
        'Q', 1833,
        'q', 1833,
        'R', 1799,
        'r', 1799,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
        'U', 1762,
        'u', 1762,
        'W', 1683,
        'w', 1683,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1639:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1772,
        'a', 1772,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'I', 1857,
        'i', 1857,
        'K', 1818,
        'k', 1818,
        'O', 1013,
        'o', 1013,
        'P', 1680,
        'p', 1680,
        'Q', 1833,
        'q', 1833,
        'R', 1802,
        'r', 1802,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
        'U', 1762,
        'u', 1762,
        'W', 1683,
        'w', 1683,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1640:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1772,
        'a', 1772,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'I', 1857,
        'i', 1857,
        'K', 1818,
        'k', 1818,
        'O', 1014,
        'o', 1014,
        'P', 914,
        'p', 914,
        'Q', 1833,
        'q', 1833,
        'R', 1799,
        'r', 1799,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
        'U', 1762,
        'u', 1762,
        'W', 1683,
        'w', 1683,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1641:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1772,
        'a', 1772,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'I', 1857,
        'i', 1857,
        'K', 1818,
        'k', 1818,
        'O', 1014,
        'o', 1014,
        'P', 1680,
        'p', 1680,
        'Q', 1833,
        'q', 1833,
        'R', 1802,
        'r', 1802,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
        'U', 1762,
        'u', 1762,
        'W', 1683,
        'w', 1683,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1642:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1856);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1643:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1686);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1791);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1644:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1826,
        'a', 1826,
        'E', 1642,
        'e', 1642,
        'I', 1794,
        'i', 1794,
        'O', 1786,
        'o', 1786,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1645:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1743,
        'a', 1743,
        'D', 1658,
        'd', 1658,
        'E', 1805,
        'e', 1805,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'P', 1817,
        'p', 1817,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1646:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1692);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1792);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1647:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1751);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1648:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1770);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1649:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'A', 1674,
        'a', 1674,
        'O', 853,
        'o', 853,
        'P', 1681,
        'p', 1681,
        'R', 1711,
        'r', 1711,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1650:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1859);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1651:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(852);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1652:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1763);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1653:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1766);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1654:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1767);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1655:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'C', 857,
        'c', 857,
        'E', 1788,
        'e', 1788,
        'R', 855,
        'r', 855,
        'T', 1810,
        't', 1810,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1656:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'C', 857,
        'c', 857,
        'R', 855,
        'r', 855,
        'S', 1820,
        's', 1820,
        'T', 1810,
        't', 1810,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1657:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(857);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(855);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1810);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1658:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(857);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1810);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1659:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1660:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'C', 870,
        'c', 870,
        'I', 1665,
        'i', 1665,
        'L', 1637,
        'l', 1637,
        'M', 1017,
        'm', 1017,
        'O', 1807,
        'o', 1807,
        'S', 857,
        's', 857,
        'U', 1723,
        'u', 1723,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1661:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'C', 870,
        'c', 870,
        'I', 1666,
        'i', 1666,
        'L', 1637,
        'l', 1637,
        'M', 1017,
        'm', 1017,
        'O', 1807,
        'o', 1807,
        'S', 857,
        's', 857,
        'U', 1723,
        'u', 1723,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1662:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'C', 870,
        'c', 870,
        'I', 1666,
        'i', 1666,
        'L', 1637,
        'l', 1637,
        'M', 1017,
        'm', 1017,
        'O', 1808,
        'o', 1808,
        'S', 857,
        's', 857,
        'U', 1723,
        'u', 1723,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1663:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(829);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1615);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1664:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(829);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1665:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1798);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1675);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1666:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1798);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1667:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1752);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1668:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1736);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1823);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1669:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1800);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1670:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1700);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1776);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1671:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1700);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1672:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1734);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1673:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1733);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1674:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1754);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1675:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1703);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1676:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(830);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1691);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1677:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(830);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1678:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1679:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'I', 1727,
        'i', 1727,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 854,
        's', 854,
        'T', 1656,
        't', 1656,
        'X', 1682,
        'x', 1682,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1680:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 854,
        's', 854,
        'T', 1657,
        't', 1657,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1681:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 1690,
        's', 1690,
        'T', 1657,
        't', 1657,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1682:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'D', 1658,
        'd', 1658,
        'E', 1824,
        'e', 1824,
        'F', 1818,
        'f', 1818,
        'H', 1689,
        'h', 1689,
        'K', 1818,
        'k', 1818,
        'P', 1818,
        'p', 1818,
        'Q', 1833,
        'q', 1833,
        'R', 1818,
        'r', 1818,
        'S', 1690,
        's', 1690,
        'T', 1655,
        't', 1655,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1683:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1804);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1684:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1627);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1685:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1612);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1686:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(868);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1687:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'D', 1659,
        'd', 1659,
        'L', 1632,
        'l', 1632,
        'C', 857,
        'S', 857,
        'c', 857,
        's', 857,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1688:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1659);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1706);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1862);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1689:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1659);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1862);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1690:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1659);
      if (lookahead == 'C' ||
          lookahead == 'S' ||
          lookahead == 'c' ||
          lookahead == 's') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1691:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'D', 1720,
        'd', 1720,
        'I', 1831,
        'i', 1831,
        '\t', 360,
        ' ', 360,
        '-', 360,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1692:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1834);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1693:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1715);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1694:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1614);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1695:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1696:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1642);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1794);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1786);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1697:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1860);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1780);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1836);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1698:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1699:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1017);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1789);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1700:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1701:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1630);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1702:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1612);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1703:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1629);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1704:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(835);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1705:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1007);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1706:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1701);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1707:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1835);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1708:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1650);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1813);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1709:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(850);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1710:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1816);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1711:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1647);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1712:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1811);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1713:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1678);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1714:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1694);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1715:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1685);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1716:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1819);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1717:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1775);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1718:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1779);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1719:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1616);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1720:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1677);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1721:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1722:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1723:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1721);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1758);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1724:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1613);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1725:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1722);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1726:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1727:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1735);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1728:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(917);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1729:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1612);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1730:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(863);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1731:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1765);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1732:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'H', 845,
        'h', 845,
        'L', 869,
        'l', 869,
        'O', 1785,
        'o', 1785,
        'R', 1636,
        'r', 1636,
        'U', 1836,
        'u', 1836,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1733:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1734:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(916);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1735:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1838);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1736:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1707);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1737:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1712);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1738:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1671);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1630);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1739:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1840);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1740:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1648);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1741:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1780);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1836);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1742:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1777);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1743:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1829);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1744:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1778);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1745:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1848);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1746:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1828);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1747:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1781);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1748:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1757);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1749:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1653);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1750:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1654);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1751:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1752:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(913);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1753:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1010);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1754:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1633);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1755:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1700);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1756:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1713);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1757:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1704);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1758:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1759:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1760:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1724);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1761:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1612);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1762:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1761);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1763:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1709);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1764:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1702);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1765:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1698);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1766:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1719);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1767:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1695);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1768:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(1809);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1731);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(1630);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1769:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(1716);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1770:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1771:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1663);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1772:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(870);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1851);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1773:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1774:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1684);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1775:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1630);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1776:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1612);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1777:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1009);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1778:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1010);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1779:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1005);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1780:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1701);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1781:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1853);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1782:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1676);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1783:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1739);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1784:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1004);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1785:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1849);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1786:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1729);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1787:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1671);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1788:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1693);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1789:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1726);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1790:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1839);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1791:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1844);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1792:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1834);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1793:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1845);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1794:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1756);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1795:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1746);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1778);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1796:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1742);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1797:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1730);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1798:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1846);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1799:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1790);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1800:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1815);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1801:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1744);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1802:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1793);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1803:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(873);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1814);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1804:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1805:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 274,
        'P', 1008,
        'p', 1008,
        'S', 856,
        's', 856,
        'T', 1803,
        't', 1803,
        'V', 1710,
        'v', 1710,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1806:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1631);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1807:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1669);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1842);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1808:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1669);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1809:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1764);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1810:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1811:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(921);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1812:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1700);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1700);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1813:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1753);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1814:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1784);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1815:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1773);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1816:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1830);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1817:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(857);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1818:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1819:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1820:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(873);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1821:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(921);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1822:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1010);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1823:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1611);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1824:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(856);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1825:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1749);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1826:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1841);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1827:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1822);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1828:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1740);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1829:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1714);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1830:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1702);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1831:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1750);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1832:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1810);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1643);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1833:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1810);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1646);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1834:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1810);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1835:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1836:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1837:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1618);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1717);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1838:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1630);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1839:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(913);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1840:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(852);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1841:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1631);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1842:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(920);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1843:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(864);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1844:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(867);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1845:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1633);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1846:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(848);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1847:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1672);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1848:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1673);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1849:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1747);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1850:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1737);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1851:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1718);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1852:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1652);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1853:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1700);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1854:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1725);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1855:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1774);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1627);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1856:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1699);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1857:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1701);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1858:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1717);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1017);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1859:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1705);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1860:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(1841);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1861:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(360);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1862:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1863:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(274);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1863);
      END_STATE();
    case 1864:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == ':') ADVANCE(755);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(275);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1865);
      END_STATE();
    case 1865:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead) &&
          lookahead != ' ') ADVANCE(1865);
      END_STATE();
    case 1866:
      ACCEPT_TOKEN(aux_sym__other_token5);
      if (lookahead == '/') ADVANCE(751);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1869);
      END_STATE();
    case 1867:
      ACCEPT_TOKEN(aux_sym__other_token5);
      ADVANCE_MAP(
        'B', 335,
        'b', 335,
        'C', 929,
        'c', 929,
        'D', 924,
        'd', 924,
        'E', 513,
        'e', 513,
        'F', 337,
        'f', 337,
        'I', 565,
        'i', 565,
        'N', 516,
        'n', 516,
        'P', 380,
        'p', 380,
        'S', 377,
        's', 377,
        'T', 502,
        't', 502,
        'V', 261,
        'v', 261,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(328);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1869);
      END_STATE();
    case 1868:
      ACCEPT_TOKEN(aux_sym__other_token5);
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 547,
        'c', 547,
        'D', 378,
        'd', 378,
        'E', 534,
        'e', 534,
        'F', 348,
        'f', 348,
        'I', 575,
        'i', 575,
        'N', 528,
        'n', 528,
        'P', 408,
        'p', 408,
        'S', 407,
        's', 407,
        'T', 512,
        't', 512,
        'V', 262,
        'v', 262,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(329);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1869);
      END_STATE();
    case 1869:
      ACCEPT_TOKEN(aux_sym__other_token5);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1869);
      END_STATE();
    default:
      return false;
  }
}

static const TSLexMode ts_lex_modes[STATE_COUNT] = {
  [0] = {.lex_state = 0},
  [1] = {.lex_state = 743},
  [2] = {.lex_state = 743},
  [3] = {.lex_state = 743},
  [4] = {.lex_state = 744},
  [5] = {.lex_state = 744},
  [6] = {.lex_state = 744},
  [7] = {.lex_state = 744},
  [8] = {.lex_state = 744},
  [9] = {.lex_state = 745},
  [10] = {.lex_state = 741},
  [11] = {.lex_state = 741},
  [12] = {.lex_state = 743},
  [13] = {.lex_state = 741},
  [14] = {.lex_state = 742},
  [15] = {.lex_state = 744},
  [16] = {.lex_state = 0},
  [17] = {.lex_state = 0},
  [18] = {.lex_state = 0},
  [19] = {.lex_state = 0},
};

static const uint16_t ts_parse_table[LARGE_STATE_COUNT][SYMBOL_COUNT] = {
  [0] = {
    [ts_builtin_sym_end] = ACTIONS(1),
    [aux_sym_pattern_token1] = ACTIONS(1),
    [sym__space] = ACTIONS(1),
    [sym_comment] = ACTIONS(1),
    [sym_heading] = ACTIONS(1),
    [sym_label] = ACTIONS(1),
    [sym_count] = ACTIONS(1),
    [aux_sym_stitch_token1] = ACTIONS(1),
    [aux_sym_stitch_token2] = ACTIONS(1),
    [sym__no_more] = ACTIONS(1),
    [sym_action] = ACTIONS(1),
    [sym_bracket] = ACTIONS(1),
    [sym_number] = ACTIONS(1),
    [aux_sym__other_token1] = ACTIONS(1),
    [aux_sym__other_token2] = ACTIONS(1),
    [aux_sym__other_token3] = ACTIONS(1),
    [aux_sym__other_token4] = ACTIONS(1),
    [aux_sym__other_token5] = ACTIONS(1),
  },
  [1] = {
    [sym_pattern] = STATE(18),
    [sym__line] = STATE(16),
    [sym__word_or_sign] = STATE(4),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(4),
    [aux_sym_pattern_repeat1] = STATE(2),
    [ts_builtin_sym_end] = ACTIONS(3),
    [aux_sym_pattern_token1] = ACTIONS(5),
    [sym__space] = ACTIONS(7),
    [sym_comment] = ACTIONS(9),
    [sym_heading] = ACTIONS(9),
    [sym_label] = ACTIONS(11),
    [sym_field] = ACTIONS(11),
    [sym_count] = ACTIONS(9),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(11),
    [sym_bracket] = ACTIONS(11),
    [sym_number] = ACTIONS(11),
    [aux_sym__other_token1] = ACTIONS(11),
    [aux_sym__other_token2] = ACTIONS(11),
    [aux_sym__other_token3] = ACTIONS(11),
    [aux_sym__other_token4] = ACTIONS(11),
    [aux_sym__other_token5] = ACTIONS(11),
  },
  [2] = {
    [sym__line] = STATE(17),
    [sym__word_or_sign] = STATE(4),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(4),
    [aux_sym_pattern_repeat1] = STATE(3),
    [ts_builtin_sym_end] = ACTIONS(15),
    [aux_sym_pattern_token1] = ACTIONS(17),
    [sym__space] = ACTIONS(7),
    [sym_comment] = ACTIONS(9),
    [sym_heading] = ACTIONS(9),
    [sym_label] = ACTIONS(11),
    [sym_field] = ACTIONS(11),
    [sym_count] = ACTIONS(9),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(11),
    [sym_bracket] = ACTIONS(11),
    [sym_number] = ACTIONS(11),
    [aux_sym__other_token1] = ACTIONS(11),
    [aux_sym__other_token2] = ACTIONS(11),
    [aux_sym__other_token3] = ACTIONS(11),
    [aux_sym__other_token4] = ACTIONS(11),
    [aux_sym__other_token5] = ACTIONS(11),
  },
  [3] = {
    [sym__line] = STATE(19),
    [sym__word_or_sign] = STATE(4),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(4),
    [aux_sym_pattern_repeat1] = STATE(3),
    [ts_builtin_sym_end] = ACTIONS(19),
    [aux_sym_pattern_token1] = ACTIONS(21),
    [sym__space] = ACTIONS(24),
    [sym_comment] = ACTIONS(27),
    [sym_heading] = ACTIONS(27),
    [sym_label] = ACTIONS(30),
    [sym_field] = ACTIONS(30),
    [sym_count] = ACTIONS(27),
    [aux_sym_stitch_token1] = ACTIONS(33),
    [sym_action] = ACTIONS(30),
    [sym_bracket] = ACTIONS(30),
    [sym_number] = ACTIONS(30),
    [aux_sym__other_token1] = ACTIONS(30),
    [aux_sym__other_token2] = ACTIONS(30),
    [aux_sym__other_token3] = ACTIONS(30),
    [aux_sym__other_token4] = ACTIONS(30),
    [aux_sym__other_token5] = ACTIONS(30),
  },
  [4] = {
    [sym__part] = STATE(6),
    [sym__word_or_sign] = STATE(6),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(6),
    [aux_sym__line_repeat1] = STATE(6),
    [ts_builtin_sym_end] = ACTIONS(36),
    [aux_sym_pattern_token1] = ACTIONS(36),
    [sym__space] = ACTIONS(38),
    [sym_comment] = ACTIONS(38),
    [sym_count] = ACTIONS(38),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(40),
    [sym_bracket] = ACTIONS(40),
    [sym_number] = ACTIONS(40),
    [aux_sym__other_token1] = ACTIONS(40),
    [aux_sym__other_token2] = ACTIONS(40),
    [aux_sym__other_token3] = ACTIONS(40),
    [aux_sym__other_token4] = ACTIONS(40),
    [aux_sym__other_token5] = ACTIONS(40),
  },
  [5] = {
    [sym__part] = STATE(7),
    [sym__word_or_sign] = STATE(7),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(7),
    [aux_sym__line_repeat1] = STATE(7),
    [ts_builtin_sym_end] = ACTIONS(42),
    [aux_sym_pattern_token1] = ACTIONS(42),
    [sym__space] = ACTIONS(44),
    [sym_comment] = ACTIONS(44),
    [sym_count] = ACTIONS(44),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(46),
    [sym_bracket] = ACTIONS(46),
    [sym_number] = ACTIONS(46),
    [aux_sym__other_token1] = ACTIONS(46),
    [aux_sym__other_token2] = ACTIONS(46),
    [aux_sym__other_token3] = ACTIONS(46),
    [aux_sym__other_token4] = ACTIONS(46),
    [aux_sym__other_token5] = ACTIONS(46),
  },
  [6] = {
    [sym__part] = STATE(8),
    [sym__word_or_sign] = STATE(8),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(8),
    [aux_sym__line_repeat1] = STATE(8),
    [ts_builtin_sym_end] = ACTIONS(42),
    [aux_sym_pattern_token1] = ACTIONS(42),
    [sym__space] = ACTIONS(48),
    [sym_comment] = ACTIONS(48),
    [sym_count] = ACTIONS(48),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(50),
    [sym_bracket] = ACTIONS(50),
    [sym_number] = ACTIONS(50),
    [aux_sym__other_token1] = ACTIONS(50),
    [aux_sym__other_token2] = ACTIONS(50),
    [aux_sym__other_token3] = ACTIONS(50),
    [aux_sym__other_token4] = ACTIONS(50),
    [aux_sym__other_token5] = ACTIONS(50),
  },
  [7] = {
    [sym__part] = STATE(8),
    [sym__word_or_sign] = STATE(8),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(8),
    [aux_sym__line_repeat1] = STATE(8),
    [ts_builtin_sym_end] = ACTIONS(52),
    [aux_sym_pattern_token1] = ACTIONS(52),
    [sym__space] = ACTIONS(48),
    [sym_comment] = ACTIONS(48),
    [sym_count] = ACTIONS(48),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(50),
    [sym_bracket] = ACTIONS(50),
    [sym_number] = ACTIONS(50),
    [aux_sym__other_token1] = ACTIONS(50),
    [aux_sym__other_token2] = ACTIONS(50),
    [aux_sym__other_token3] = ACTIONS(50),
    [aux_sym__other_token4] = ACTIONS(50),
    [aux_sym__other_token5] = ACTIONS(50),
  },
  [8] = {
    [sym__part] = STATE(8),
    [sym__word_or_sign] = STATE(8),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(8),
    [aux_sym__line_repeat1] = STATE(8),
    [ts_builtin_sym_end] = ACTIONS(54),
    [aux_sym_pattern_token1] = ACTIONS(54),
    [sym__space] = ACTIONS(56),
    [sym_comment] = ACTIONS(56),
    [sym_count] = ACTIONS(56),
    [aux_sym_stitch_token1] = ACTIONS(59),
    [sym_action] = ACTIONS(62),
    [sym_bracket] = ACTIONS(62),
    [sym_number] = ACTIONS(62),
    [aux_sym__other_token1] = ACTIONS(62),
    [aux_sym__other_token2] = ACTIONS(62),
    [aux_sym__other_token3] = ACTIONS(62),
    [aux_sym__other_token4] = ACTIONS(62),
    [aux_sym__other_token5] = ACTIONS(62),
  },
  [9] = {
    [sym__word_or_sign] = STATE(5),
    [sym_stitch] = STATE(14),
    [sym__other] = STATE(5),
    [ts_builtin_sym_end] = ACTIONS(36),
    [aux_sym_pattern_token1] = ACTIONS(36),
    [sym_comment] = ACTIONS(65),
    [sym_label] = ACTIONS(67),
    [sym_count] = ACTIONS(65),
    [aux_sym_stitch_token1] = ACTIONS(13),
    [sym_action] = ACTIONS(67),
    [sym_bracket] = ACTIONS(67),
    [sym_number] = ACTIONS(67),
    [aux_sym__other_token1] = ACTIONS(67),
    [aux_sym__other_token2] = ACTIONS(67),
    [aux_sym__other_token3] = ACTIONS(67),
    [aux_sym__other_token4] = ACTIONS(67),
    [aux_sym__other_token5] = ACTIONS(67),
  },
  [10] = {
    [aux_sym_stitch_repeat1] = STATE(11),
    [ts_builtin_sym_end] = ACTIONS(69),
    [aux_sym_pattern_token1] = ACTIONS(69),
    [sym__space] = ACTIONS(71),
    [sym_comment] = ACTIONS(69),
    [sym_count] = ACTIONS(69),
    [aux_sym_stitch_token1] = ACTIONS(71),
    [aux_sym_stitch_token2] = ACTIONS(73),
    [sym__no_more] = ACTIONS(71),
    [sym_action] = ACTIONS(71),
    [sym_bracket] = ACTIONS(71),
    [sym_number] = ACTIONS(71),
    [aux_sym__other_token1] = ACTIONS(71),
    [aux_sym__other_token2] = ACTIONS(71),
    [aux_sym__other_token3] = ACTIONS(71),
    [aux_sym__other_token4] = ACTIONS(71),
    [aux_sym__other_token5] = ACTIONS(71),
  },
  [11] = {
    [aux_sym_stitch_repeat1] = STATE(13),
    [ts_builtin_sym_end] = ACTIONS(75),
    [aux_sym_pattern_token1] = ACTIONS(75),
    [sym__space] = ACTIONS(77),
    [sym_comment] = ACTIONS(75),
    [sym_count] = ACTIONS(75),
    [aux_sym_stitch_token1] = ACTIONS(77),
    [aux_sym_stitch_token2] = ACTIONS(79),
    [sym__no_more] = ACTIONS(77),
    [sym_action] = ACTIONS(77),
    [sym_bracket] = ACTIONS(77),
    [sym_number] = ACTIONS(77),
    [aux_sym__other_token1] = ACTIONS(77),
    [aux_sym__other_token2] = ACTIONS(77),
    [aux_sym__other_token3] = ACTIONS(77),
    [aux_sym__other_token4] = ACTIONS(77),
    [aux_sym__other_token5] = ACTIONS(77),
  },
  [12] = {
    [ts_builtin_sym_end] = ACTIONS(19),
    [aux_sym_pattern_token1] = ACTIONS(19),
    [sym__space] = ACTIONS(19),
    [sym_comment] = ACTIONS(19),
    [sym_heading] = ACTIONS(19),
    [sym_label] = ACTIONS(81),
    [sym_field] = ACTIONS(81),
    [sym_count] = ACTIONS(19),
    [aux_sym_stitch_token1] = ACTIONS(81),
    [sym_action] = ACTIONS(81),
    [sym_bracket] = ACTIONS(81),
    [sym_number] = ACTIONS(81),
    [aux_sym__other_token1] = ACTIONS(81),
    [aux_sym__other_token2] = ACTIONS(81),
    [aux_sym__other_token3] = ACTIONS(81),
    [aux_sym__other_token4] = ACTIONS(81),
    [aux_sym__other_token5] = ACTIONS(81),
  },
  [13] = {
    [aux_sym_stitch_repeat1] = STATE(13),
    [ts_builtin_sym_end] = ACTIONS(83),
    [aux_sym_pattern_token1] = ACTIONS(83),
    [sym__space] = ACTIONS(85),
    [sym_comment] = ACTIONS(83),
    [sym_count] = ACTIONS(83),
    [aux_sym_stitch_token1] = ACTIONS(85),
    [aux_sym_stitch_token2] = ACTIONS(87),
    [sym__no_more] = ACTIONS(85),
    [sym_action] = ACTIONS(85),
    [sym_bracket] = ACTIONS(85),
    [sym_number] = ACTIONS(85),
    [aux_sym__other_token1] = ACTIONS(85),
    [aux_sym__other_token2] = ACTIONS(85),
    [aux_sym__other_token3] = ACTIONS(85),
    [aux_sym__other_token4] = ACTIONS(85),
    [aux_sym__other_token5] = ACTIONS(85),
  },
  [14] = {
    [ts_builtin_sym_end] = ACTIONS(90),
    [aux_sym_pattern_token1] = ACTIONS(90),
    [sym__space] = ACTIONS(92),
    [sym_comment] = ACTIONS(90),
    [sym_count] = ACTIONS(90),
    [aux_sym_stitch_token1] = ACTIONS(92),
    [sym__no_more] = ACTIONS(94),
    [sym_action] = ACTIONS(92),
    [sym_bracket] = ACTIONS(92),
    [sym_number] = ACTIONS(92),
    [aux_sym__other_token1] = ACTIONS(92),
    [aux_sym__other_token2] = ACTIONS(92),
    [aux_sym__other_token3] = ACTIONS(92),
    [aux_sym__other_token4] = ACTIONS(92),
    [aux_sym__other_token5] = ACTIONS(92),
  },
};

static const uint16_t ts_small_parse_table[] = {
  [0] = 2,
    ACTIONS(96), 5,
      ts_builtin_sym_end,
      aux_sym_pattern_token1,
      sym__space,
      sym_comment,
      sym_count,
    ACTIONS(98), 9,
      aux_sym_stitch_token1,
      sym_action,
      sym_bracket,
      sym_number,
      aux_sym__other_token1,
      aux_sym__other_token2,
      aux_sym__other_token3,
      aux_sym__other_token4,
      aux_sym__other_token5,
  [19] = 2,
    ACTIONS(15), 1,
      ts_builtin_sym_end,
    ACTIONS(100), 1,
      aux_sym_pattern_token1,
  [26] = 2,
    ACTIONS(100), 1,
      aux_sym_pattern_token1,
    ACTIONS(102), 1,
      ts_builtin_sym_end,
  [33] = 1,
    ACTIONS(104), 1,
      ts_builtin_sym_end,
  [37] = 1,
    ACTIONS(100), 1,
      aux_sym_pattern_token1,
};

static const uint32_t ts_small_parse_table_map[] = {
  [SMALL_STATE(15)] = 0,
  [SMALL_STATE(16)] = 19,
  [SMALL_STATE(17)] = 26,
  [SMALL_STATE(18)] = 33,
  [SMALL_STATE(19)] = 37,
};

static const TSParseActionEntry ts_parse_actions[] = {
  [0] = {.entry = {.count = 0, .reusable = false}},
  [1] = {.entry = {.count = 1, .reusable = false}}, RECOVER(),
  [3] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pattern, 0, 0, 0),
  [5] = {.entry = {.count = 1, .reusable = true}}, SHIFT(2),
  [7] = {.entry = {.count = 1, .reusable = true}}, SHIFT(9),
  [9] = {.entry = {.count = 1, .reusable = true}}, SHIFT(4),
  [11] = {.entry = {.count = 1, .reusable = false}}, SHIFT(4),
  [13] = {.entry = {.count = 1, .reusable = false}}, SHIFT(10),
  [15] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pattern, 1, 0, 0),
  [17] = {.entry = {.count = 1, .reusable = true}}, SHIFT(3),
  [19] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0),
  [21] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0), SHIFT_REPEAT(3),
  [24] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0), SHIFT_REPEAT(9),
  [27] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0), SHIFT_REPEAT(4),
  [30] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0), SHIFT_REPEAT(4),
  [33] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0), SHIFT_REPEAT(10),
  [36] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__line, 1, 0, 0),
  [38] = {.entry = {.count = 1, .reusable = true}}, SHIFT(6),
  [40] = {.entry = {.count = 1, .reusable = false}}, SHIFT(6),
  [42] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__line, 2, 0, 0),
  [44] = {.entry = {.count = 1, .reusable = true}}, SHIFT(7),
  [46] = {.entry = {.count = 1, .reusable = false}}, SHIFT(7),
  [48] = {.entry = {.count = 1, .reusable = true}}, SHIFT(8),
  [50] = {.entry = {.count = 1, .reusable = false}}, SHIFT(8),
  [52] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__line, 3, 0, 0),
  [54] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym__line_repeat1, 2, 0, 0),
  [56] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym__line_repeat1, 2, 0, 0), SHIFT_REPEAT(8),
  [59] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__line_repeat1, 2, 0, 0), SHIFT_REPEAT(10),
  [62] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__line_repeat1, 2, 0, 0), SHIFT_REPEAT(8),
  [65] = {.entry = {.count = 1, .reusable = true}}, SHIFT(5),
  [67] = {.entry = {.count = 1, .reusable = false}}, SHIFT(5),
  [69] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_stitch, 1, 0, 0),
  [71] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_stitch, 1, 0, 0),
  [73] = {.entry = {.count = 1, .reusable = false}}, SHIFT(11),
  [75] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_stitch, 2, 0, 0),
  [77] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_stitch, 2, 0, 0),
  [79] = {.entry = {.count = 1, .reusable = false}}, SHIFT(13),
  [81] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym_pattern_repeat1, 2, 0, 0),
  [83] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_stitch_repeat1, 2, 0, 0),
  [85] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym_stitch_repeat1, 2, 0, 0),
  [87] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_stitch_repeat1, 2, 0, 0), SHIFT_REPEAT(13),
  [90] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__word_or_sign, 1, 0, 0),
  [92] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__word_or_sign, 1, 0, 0),
  [94] = {.entry = {.count = 1, .reusable = true}}, SHIFT(15),
  [96] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__word_or_sign, 2, 0, 0),
  [98] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__word_or_sign, 2, 0, 0),
  [100] = {.entry = {.count = 1, .reusable = true}}, SHIFT(12),
  [102] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pattern, 2, 0, 0),
  [104] = {.entry = {.count = 1, .reusable = true}},  ACCEPT_INPUT(),
};

#ifdef __cplusplus
extern "C" {
#endif
#ifdef TREE_SITTER_HIDE_SYMBOLS
#define TS_PUBLIC
#elif defined(_WIN32)
#define TS_PUBLIC __declspec(dllexport)
#else
#define TS_PUBLIC __attribute__((visibility("default")))
#endif

TS_PUBLIC const TSLanguage *tree_sitter_crochet(void) {
  static const TSLanguage language = {
    .version = LANGUAGE_VERSION,
    .symbol_count = SYMBOL_COUNT,
    .alias_count = ALIAS_COUNT,
    .token_count = TOKEN_COUNT,
    .external_token_count = EXTERNAL_TOKEN_COUNT,
    .state_count = STATE_COUNT,
    .large_state_count = LARGE_STATE_COUNT,
    .production_id_count = PRODUCTION_ID_COUNT,
    .field_count = FIELD_COUNT,
    .max_alias_sequence_length = MAX_ALIAS_SEQUENCE_LENGTH,
    .parse_table = &ts_parse_table[0][0],
    .small_parse_table = ts_small_parse_table,
    .small_parse_table_map = ts_small_parse_table_map,
    .parse_actions = ts_parse_actions,
    .symbol_names = ts_symbol_names,
    .symbol_metadata = ts_symbol_metadata,
    .public_symbol_map = ts_symbol_map,
    .alias_map = ts_non_terminal_alias_map,
    .alias_sequences = &ts_alias_sequences[0][0],
    .lex_modes = ts_lex_modes,
    .lex_fn = ts_lex,
    .primary_state_ids = ts_primary_state_ids,
  };
  return &language;
}
#ifdef __cplusplus
}
#endif
