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
      if (eof) ADVANCE(750);
      ADVANCE_MAP(
        '\n', 751,
        '\r', 239,
        '(', 1024,
        '-', 1875,
        '/', 1874,
        '\t', 753,
        ' ', 753,
        'B', 1641,
        'b', 1641,
        'C', 922,
        'c', 922,
        'D', 916,
        'd', 916,
        'E', 1686,
        'e', 1686,
        'F', 1645,
        'f', 1645,
        'H', 1626,
        'h', 1626,
        'I', 1778,
        'i', 1778,
        'J', 1803,
        'j', 1803,
        'K', 1790,
        'k', 1790,
        'L', 1651,
        'l', 1651,
        'M', 1642,
        'm', 1642,
        'N', 1704,
        'n', 1704,
        'O', 1794,
        'o', 1794,
        'P', 1667,
        'p', 1667,
        'Q', 1840,
        'q', 1840,
        'R', 1631,
        'r', 1631,
        'S', 1627,
        's', 1627,
        'T', 1615,
        't', 1615,
        'V', 1623,
        'v', 1623,
        'W', 1715,
        'w', 1715,
        'X', 1869,
        'x', 1869,
        ')', 1023,
        '*', 1023,
        '[', 1023,
        ']', 1023,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1025);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1877);
      END_STATE();
    case 1:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'A', 37,
        'a', 37,
        'O', 788,
        'o', 788,
        'P', 222,
        'p', 222,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 2:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(48);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(133);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 3:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'A', 119,
        'a', 119,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'I', 199,
        'i', 199,
        'K', 167,
        'k', 167,
        'O', 158,
        'o', 158,
        'P', 221,
        'p', 221,
        'Q', 182,
        'q', 182,
        'R', 143,
        'r', 143,
        'S', 789,
        's', 789,
        'T', 32,
        't', 32,
        'U', 110,
        'u', 110,
        'W', 51,
        'w', 51,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 4:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'A', 119,
        'a', 119,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'I', 199,
        'i', 199,
        'K', 167,
        'k', 167,
        'O', 158,
        'o', 158,
        'P', 221,
        'p', 221,
        'Q', 182,
        'q', 182,
        'R', 148,
        'r', 148,
        'S', 789,
        's', 789,
        'T', 32,
        't', 32,
        'U', 110,
        'u', 110,
        'W', 51,
        'w', 51,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 5:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(22);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(40);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 6:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(58);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(134);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 7:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'A', 94,
        'a', 94,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'K', 167,
        'k', 167,
        'N', 49,
        'n', 49,
        'O', 198,
        'o', 198,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 167,
        'r', 167,
        'S', 789,
        's', 789,
        'T', 32,
        't', 32,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 8:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'A', 94,
        'a', 94,
        'D', 33,
        'd', 33,
        'E', 170,
        'e', 170,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 167,
        'r', 167,
        'S', 789,
        's', 789,
        'T', 32,
        't', 32,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 9:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(161);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 10:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(177);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 11:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(194);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 12:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(97);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 13:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'A', 41,
        'a', 41,
        'O', 788,
        'o', 788,
        'P', 222,
        'p', 222,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 14:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(117);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 15:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 765,
        'c', 765,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 8,
        'r', 8,
        'S', 211,
        's', 211,
        'T', 811,
        't', 811,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 16:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 765,
        'c', 765,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 764,
        'r', 764,
        'S', 211,
        's', 211,
        'T', 811,
        't', 811,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 17:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 8,
        'r', 8,
        'S', 211,
        's', 211,
        'T', 212,
        't', 212,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 18:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 8,
        'r', 8,
        'S', 210,
        's', 210,
        'T', 212,
        't', 212,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 19:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 7,
        'r', 7,
        'S', 211,
        's', 211,
        'T', 212,
        't', 212,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 20:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 36,
        'p', 36,
        'Q', 181,
        'q', 181,
        'R', 8,
        'r', 8,
        'S', 211,
        's', 211,
        'T', 212,
        't', 212,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 21:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 1,
        'b', 1,
        'C', 87,
        'c', 87,
        'D', 218,
        'd', 218,
        'E', 46,
        'e', 46,
        'F', 3,
        'f', 3,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 8,
        'r', 8,
        'S', 211,
        's', 211,
        'T', 234,
        't', 234,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 22:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(832);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 23:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(111);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 24:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(113);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 25:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(115);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 26:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 13,
        'b', 13,
        'C', 87,
        'c', 87,
        'D', 208,
        'd', 208,
        'E', 46,
        'e', 46,
        'F', 4,
        'f', 4,
        'H', 209,
        'h', 209,
        'I', 118,
        'i', 118,
        'K', 122,
        'k', 122,
        'L', 91,
        'l', 91,
        'N', 92,
        'n', 92,
        'P', 35,
        'p', 35,
        'Q', 181,
        'q', 181,
        'R', 8,
        'r', 8,
        'S', 211,
        's', 211,
        'T', 212,
        't', 212,
        'V', 213,
        'v', 213,
        'X', 225,
        'x', 225,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 27:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 767,
        'c', 767,
        'D', 214,
        'd', 214,
        'T', 766,
        't', 766,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 28:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 767,
        'c', 767,
        'R', 767,
        'r', 767,
        'T', 766,
        't', 766,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 29:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(767);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(766);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 30:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(810);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 31:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 792,
        'c', 792,
        'R', 790,
        'r', 790,
        'S', 165,
        's', 165,
        'T', 157,
        't', 157,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 32:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 792,
        'c', 792,
        'R', 790,
        'r', 790,
        'T', 157,
        't', 157,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 33:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(792);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(157);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 34:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 35:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 807,
        'c', 807,
        'I', 44,
        'i', 44,
        'L', 12,
        'l', 12,
        'O', 155,
        'o', 155,
        'S', 792,
        's', 792,
        'U', 78,
        'u', 78,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 36:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 807,
        'c', 807,
        'I', 44,
        'i', 44,
        'L', 12,
        'l', 12,
        'O', 154,
        'o', 154,
        'S', 792,
        's', 792,
        'U', 78,
        'u', 78,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 37:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(102);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 38:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(763);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(223);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 39:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(763);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 40:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(90);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(172);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 41:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(105);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 42:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(89);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(285);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 43:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(142);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 44:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(144);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 45:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(225);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 46:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'I', 82,
        'i', 82,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 167,
        'r', 167,
        'S', 789,
        's', 789,
        'T', 31,
        't', 31,
        'X', 47,
        'x', 47,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 47:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 167,
        'r', 167,
        'S', 55,
        's', 55,
        'T', 220,
        't', 220,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 48:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(805);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 49:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(227);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 50:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 214,
        'd', 214,
        'S', 810,
        's', 810,
        'C', 767,
        'T', 767,
        'c', 767,
        't', 767,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 51:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(150);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 52:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 34,
        'd', 34,
        'L', 236,
        'l', 236,
        'C', 792,
        'S', 792,
        'c', 792,
        's', 792,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 53:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 34,
        'd', 34,
        'R', 64,
        'r', 64,
        'T', 202,
        't', 202,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 54:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(34);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(202);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 55:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 34,
        'd', 34,
        'C', 792,
        'S', 792,
        'c', 792,
        's', 792,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 56:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(11);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 57:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(226);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 58:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(183);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 59:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(232);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 60:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(73);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 61:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(238);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 62:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(225);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 63:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 64:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(69);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 65:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(828);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 66:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(39);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 67:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(184);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 68:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(820);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 69:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 70:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(45);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 71:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 72:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(232);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 73:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(59);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 74:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(24);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 75:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(61);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 76:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 77:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1003);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 78:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(76);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(107);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 79:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(219);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 80:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(77);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 81:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(233);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 82:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(88);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 83:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(799);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 84:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(825);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 85:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(232);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 86:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(113);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 87:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'H', 823,
        'h', 823,
        'L', 806,
        'l', 806,
        'R', 5,
        'r', 5,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 88:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(192);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 89:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(230);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 90:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(67);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 91:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'I', 124,
        'i', 124,
        'O', 123,
        'o', 123,
        'P', 237,
        'p', 237,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 92:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(120);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 93:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(187);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 94:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(179);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 95:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(14);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 96:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(147);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 97:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(135);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 98:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(174);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 99:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(121);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 100:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(104);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 101:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(25);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 102:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 103:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(70);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 104:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(65);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 105:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(235);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 106:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 107:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 108:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(81);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 109:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(146);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 110:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(114);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(237);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 111:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(68);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 112:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(72);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 113:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(63);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 114:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(232);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 115:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(62);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 116:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'M', 156,
        'm', 156,
        'N', 86,
        'n', 86,
        'X', 215,
        'x', 215,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 117:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(225);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 118:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(38);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 119:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 120:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(69);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 121:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1003);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 122:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(93);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 123:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(85);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(151);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 124:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(103);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 125:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(56);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 126:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(49);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(198);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 127:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(49);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 128:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 129:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(84);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(151);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 130:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(60);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 131:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(226);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 132:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(191);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 133:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(186);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 134:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(183);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 135:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(232);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 136:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(98);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 137:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(195);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 138:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(79);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 139:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(83);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 140:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(80);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 141:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 142:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(159);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 143:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(132);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 144:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(190);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 145:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(176);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 146:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(129);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(237);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 147:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(117);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 148:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(137);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 149:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(810);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(162);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 150:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 151:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(237);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 152:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(145);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 153:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(10);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 154:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(43);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(180);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 155:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(43);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 156:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(112);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 157:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 158:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(201);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(125);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 159:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(119);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 160:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(126);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 161:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(57);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 162:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(131);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 163:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(74);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 164:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(175);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 165:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 166:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(185);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 167:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 168:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(798);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 169:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(188);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 170:
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'S', 791,
        's', 791,
        'T', 149,
        't', 149,
        'V', 224,
        'v', 224,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 171:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(791);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 172:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(231);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 173:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(101);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 174:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(95);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 175:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(72);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 176:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(180);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 177:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(168);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 178:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(196);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 179:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(75);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 180:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(225);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 181:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(157);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(2);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 182:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(157);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(6);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 183:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(157);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 184:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 185:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(796);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 186:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(804);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 187:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(832);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 188:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(800);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 189:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(139);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 190:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(817);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 191:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(216);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 192:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(215);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 193:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(163);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 194:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(96);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 195:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(235);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 196:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(801);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 197:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(23);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 198:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(127);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(227);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 199:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(69);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 200:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(71);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 201:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(9);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 202:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 203:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(241);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 204:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 205:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(878);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 206:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(284);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 207:
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 208:
      ADVANCE_MAP(
        '\t', 407,
        ' ', 29,
        '.', 318,
        ':', 760,
        'B', 106,
        'b', 106,
        'C', 792,
        'c', 792,
        'E', 39,
        'e', 39,
        'O', 197,
        'o', 197,
        'T', 157,
        't', 157,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 209:
      ADVANCE_MAP(
        '\t', 405,
        ' ', 27,
        '.', 318,
        ':', 760,
        'A', 108,
        'a', 108,
        'D', 34,
        'd', 34,
        'T', 202,
        't', 202,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 210:
      ADVANCE_MAP(
        '\t', 439,
        ' ', 50,
        '.', 318,
        ':', 760,
        'C', 792,
        'c', 792,
        'D', 34,
        'd', 34,
        'E', 200,
        'e', 200,
        'H', 794,
        'h', 794,
        'I', 116,
        'i', 116,
        'L', 831,
        'l', 831,
        'P', 100,
        'p', 100,
        'S', 792,
        's', 792,
        'T', 800,
        't', 800,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 211:
      ADVANCE_MAP(
        '\t', 439,
        ' ', 50,
        '.', 318,
        ':', 760,
        'C', 792,
        'c', 792,
        'D', 34,
        'd', 34,
        'E', 200,
        'e', 200,
        'H', 794,
        'h', 794,
        'I', 116,
        'i', 116,
        'L', 831,
        'l', 831,
        'P', 100,
        'p', 100,
        'S', 792,
        's', 792,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 212:
      ADVANCE_MAP(
        '\t', 356,
        ' ', 15,
        '-', 363,
        '.', 318,
        ':', 760,
        'C', 792,
        'c', 792,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 53,
        'h', 53,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 813,
        'r', 813,
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
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 213:
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(166);
      if (lookahead == '-') ADVANCE(672);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(184);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 214:
      if (lookahead == '\t') ADVANCE(408);
      if (lookahead == ' ') ADVANCE(30);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 215:
      if (lookahead == '\t') ADVANCE(699);
      if (lookahead == ' ') ADVANCE(189);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(139);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 216:
      if (lookahead == '\t') ADVANCE(630);
      if (lookahead == ' ') ADVANCE(152);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 217:
      if (lookahead == '\t') ADVANCE(280);
      if (lookahead == ' ') ADVANCE(217);
      if (lookahead == ':') ADVANCE(757);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 218:
      ADVANCE_MAP(
        '\t', 406,
        ' ', 28,
        '.', 324,
        ':', 760,
        'B', 106,
        'b', 106,
        'C', 792,
        'c', 792,
        'E', 39,
        'e', 39,
        'O', 197,
        'o', 197,
        'T', 157,
        't', 157,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 219:
      if (lookahead == '\t') ADVANCE(409);
      if (lookahead == ' ') ADVANCE(42);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 220:
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        ':', 760,
        'C', 792,
        'c', 792,
        'E', 130,
        'e', 130,
        'R', 790,
        'r', 790,
        'T', 157,
        't', 157,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 221:
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        ':', 760,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 167,
        'r', 167,
        'S', 789,
        's', 789,
        'T', 32,
        't', 32,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 222:
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        ':', 760,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 54,
        'h', 54,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 167,
        'r', 167,
        'S', 55,
        's', 55,
        'T', 32,
        't', 32,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 223:
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        ':', 760,
        'D', 66,
        'd', 66,
        'I', 173,
        'i', 173,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 224:
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(164);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 225:
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 226:
      if (lookahead == '\t') ADVANCE(629);
      if (lookahead == ' ') ADVANCE(153);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 227:
      if (lookahead == '\t') ADVANCE(278);
      if (lookahead == ' ') ADVANCE(229);
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(228);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 228:
      if (lookahead == '\t') ADVANCE(278);
      if (lookahead == ' ') ADVANCE(229);
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == ':') ADVANCE(758);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 229:
      if (lookahead == '\t') ADVANCE(278);
      if (lookahead == ' ') ADVANCE(229);
      if (lookahead == ':') ADVANCE(758);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(281);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 230:
      if (lookahead == '\t') ADVANCE(740);
      if (lookahead == ' ') ADVANCE(205);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 231:
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(59);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 232:
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 233:
      if (lookahead == '\t') ADVANCE(362);
      if (lookahead == ' ') ADVANCE(21);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 234:
      ADVANCE_MAP(
        '\t', 357,
        ' ', 16,
        '-', 363,
        '.', 324,
        ':', 760,
        'C', 792,
        'c', 792,
        'D', 33,
        'd', 33,
        'E', 171,
        'e', 171,
        'F', 167,
        'f', 167,
        'H', 53,
        'h', 53,
        'K', 167,
        'k', 167,
        'P', 167,
        'p', 167,
        'Q', 182,
        'q', 182,
        'R', 813,
        'r', 813,
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
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 235:
      if (lookahead == '\t') ADVANCE(361);
      if (lookahead == ' ') ADVANCE(20);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 236:
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(188);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 237:
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 238:
      if (lookahead == '\t') ADVANCE(377);
      if (lookahead == ' ') ADVANCE(26);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(207);
      END_STATE();
    case 239:
      if (lookahead == '\n') ADVANCE(751);
      END_STATE();
    case 240:
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == '/') ADVANCE(1614);
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(241);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')' &&
          lookahead != '.' &&
          lookahead != '/') ADVANCE(241);
      END_STATE();
    case 241:
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(241);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')' &&
          lookahead != '.') ADVANCE(241);
      END_STATE();
    case 242:
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      END_STATE();
    case 243:
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(242);
      END_STATE();
    case 244:
      ADVANCE_MAP(
        '(', 739,
        'C', 508,
        'c', 508,
        'D', 402,
        'd', 402,
        'H', 446,
        'h', 446,
        'S', 401,
        's', 401,
        'T', 646,
        't', 646,
      );
      END_STATE();
    case 245:
      if (lookahead == ')') ADVANCE(277);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')') ADVANCE(245);
      END_STATE();
    case 246:
      if (lookahead == ')') ADVANCE(761);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(664);
      if ((!eof && set_contains(sym_count_character_set_4, 458, lookahead))) ADVANCE(250);
      END_STATE();
    case 247:
      if (lookahead == ')') ADVANCE(761);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(712);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(249);
      if ((!eof && set_contains(sym_count_character_set_3, 460, lookahead))) ADVANCE(250);
      END_STATE();
    case 248:
      if (lookahead == ')') ADVANCE(761);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(249);
      if ((!eof && set_contains(sym_count_character_set_2, 456, lookahead))) ADVANCE(250);
      END_STATE();
    case 249:
      if (lookahead == ')') ADVANCE(761);
      if ((!eof && set_contains(sym_count_character_set_2, 456, lookahead))) ADVANCE(250);
      END_STATE();
    case 250:
      if (lookahead == ')') ADVANCE(761);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')') ADVANCE(250);
      END_STATE();
    case 251:
      if (lookahead == ')') ADVANCE(319);
      if (lookahead == ' ' ||
          lookahead == ',' ||
          ('0' <= lookahead && lookahead <= '9')) ADVANCE(251);
      END_STATE();
    case 252:
      ADVANCE_MAP(
        '-', 363,
        '.', 318,
        ':', 760,
        '\t', 369,
        ' ', 369,
        'C', 895,
        'c', 895,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 442,
        'h', 442,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 882,
        'r', 882,
        'S', 441,
        's', 441,
        'T', 396,
        't', 396,
        'U', 582,
        'u', 582,
        'W', 615,
        'w', 615,
      );
      END_STATE();
    case 253:
      ADVANCE_MAP(
        '-', 363,
        '.', 318,
        '\t', 369,
        ' ', 369,
        'C', 895,
        'c', 895,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 442,
        'h', 442,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 882,
        'r', 882,
        'S', 441,
        's', 441,
        'T', 396,
        't', 396,
        'U', 582,
        'u', 582,
        'W', 615,
        'w', 615,
      );
      END_STATE();
    case 254:
      ADVANCE_MAP(
        '-', 363,
        '.', 324,
        ':', 760,
        '\t', 370,
        ' ', 370,
        'C', 895,
        'c', 895,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 442,
        'h', 442,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 882,
        'r', 882,
        'S', 441,
        's', 441,
        'T', 396,
        't', 396,
        'U', 582,
        'u', 582,
        'W', 615,
        'w', 615,
      );
      END_STATE();
    case 255:
      ADVANCE_MAP(
        '-', 363,
        '.', 324,
        '\t', 370,
        ' ', 370,
        'C', 895,
        'c', 895,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 442,
        'h', 442,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 882,
        'r', 882,
        'S', 441,
        's', 441,
        'T', 396,
        't', 396,
        'U', 582,
        'u', 582,
        'W', 615,
        'w', 615,
      );
      END_STATE();
    case 256:
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      END_STATE();
    case 257:
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(431);
      END_STATE();
    case 258:
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(367);
      END_STATE();
    case 259:
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(366);
      END_STATE();
    case 260:
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(378);
      END_STATE();
    case 261:
      if (lookahead == '-') ADVANCE(672);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(673);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(693);
      END_STATE();
    case 262:
      if (lookahead == '-') ADVANCE(672);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(673);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(693);
      END_STATE();
    case 263:
      if (lookahead == '-') ADVANCE(668);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(674);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(690);
      END_STATE();
    case 264:
      if (lookahead == '-') ADVANCE(683);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(684);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(701);
      END_STATE();
    case 265:
      ADVANCE_MAP(
        '.', 318,
        ':', 760,
        '\t', 387,
        ' ', 387,
        'B', 547,
        'b', 547,
        'C', 895,
        'c', 895,
        'E', 403,
        'e', 403,
        'O', 720,
        'o', 720,
        'T', 645,
        't', 645,
      );
      END_STATE();
    case 266:
      ADVANCE_MAP(
        '.', 318,
        ':', 760,
        '\t', 384,
        ' ', 384,
        'A', 554,
        'a', 554,
        'D', 393,
        'd', 393,
        'T', 733,
        't', 733,
      );
      END_STATE();
    case 267:
      ADVANCE_MAP(
        '.', 318,
        ':', 760,
        '\t', 434,
        ' ', 434,
        'C', 895,
        'c', 895,
        'D', 393,
        'd', 393,
        'E', 729,
        'e', 729,
        'H', 898,
        'h', 898,
        'I', 566,
        'i', 566,
        'L', 889,
        'l', 889,
        'P', 530,
        'p', 530,
        'S', 895,
        's', 895,
      );
      END_STATE();
    case 268:
      ADVANCE_MAP(
        '.', 318,
        ':', 760,
        '\t', 434,
        ' ', 434,
        'C', 895,
        'c', 895,
        'D', 393,
        'd', 393,
        'E', 729,
        'e', 729,
        'H', 898,
        'h', 898,
        'I', 566,
        'i', 566,
        'L', 889,
        'l', 889,
        'P', 530,
        'p', 530,
        'S', 895,
        's', 895,
        'T', 904,
        't', 904,
      );
      END_STATE();
    case 269:
      ADVANCE_MAP(
        '.', 318,
        '\t', 387,
        ' ', 387,
        'B', 547,
        'b', 547,
        'C', 895,
        'c', 895,
        'E', 403,
        'e', 403,
        'O', 720,
        'o', 720,
        'T', 645,
        't', 645,
      );
      END_STATE();
    case 270:
      ADVANCE_MAP(
        '.', 318,
        '\t', 387,
        ' ', 387,
        'B', 547,
        'b', 547,
        'C', 895,
        'c', 895,
        'E', 428,
        'e', 428,
        'O', 720,
        'o', 720,
        'T', 645,
        't', 645,
      );
      END_STATE();
    case 271:
      ADVANCE_MAP(
        '.', 318,
        '\t', 384,
        ' ', 384,
        'A', 554,
        'a', 554,
        'D', 393,
        'd', 393,
        'T', 733,
        't', 733,
      );
      END_STATE();
    case 272:
      ADVANCE_MAP(
        '.', 318,
        '\t', 434,
        ' ', 434,
        'C', 895,
        'c', 895,
        'D', 393,
        'd', 393,
        'E', 729,
        'e', 729,
        'H', 898,
        'h', 898,
        'I', 566,
        'i', 566,
        'L', 889,
        'l', 889,
        'P', 530,
        'p', 530,
        'S', 895,
        's', 895,
      );
      END_STATE();
    case 273:
      ADVANCE_MAP(
        '.', 318,
        '\t', 434,
        ' ', 434,
        'C', 895,
        'c', 895,
        'D', 393,
        'd', 393,
        'E', 729,
        'e', 729,
        'H', 898,
        'h', 898,
        'I', 566,
        'i', 566,
        'L', 889,
        'l', 889,
        'P', 530,
        'p', 530,
        'S', 895,
        's', 895,
        'T', 904,
        't', 904,
      );
      END_STATE();
    case 274:
      ADVANCE_MAP(
        '.', 324,
        ':', 760,
        '\t', 386,
        ' ', 386,
        'B', 547,
        'b', 547,
        'C', 895,
        'c', 895,
        'E', 403,
        'e', 403,
        'O', 720,
        'o', 720,
        'T', 645,
        't', 645,
      );
      END_STATE();
    case 275:
      ADVANCE_MAP(
        '.', 324,
        '\t', 386,
        ' ', 386,
        'B', 547,
        'b', 547,
        'C', 895,
        'c', 895,
        'E', 403,
        'e', 403,
        'O', 720,
        'o', 720,
        'T', 645,
        't', 645,
      );
      END_STATE();
    case 276:
      if (lookahead == '/') ADVANCE(1873);
      END_STATE();
    case 277:
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      END_STATE();
    case 278:
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 279:
      if (lookahead == ':') ADVANCE(757);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(279);
      END_STATE();
    case 280:
      if (lookahead == ':') ADVANCE(757);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(279);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 281:
      if (lookahead == ':') ADVANCE(760);
      END_STATE();
    case 282:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(707);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(607);
      END_STATE();
    case 283:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(388);
      END_STATE();
    case 284:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(634);
      END_STATE();
    case 285:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(422);
      END_STATE();
    case 286:
      ADVANCE_MAP(
        ':', 760,
        'A', 522,
        'a', 522,
        'D', 397,
        'd', 397,
        'E', 670,
        'e', 670,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'N', 433,
        'n', 433,
        'O', 723,
        'o', 723,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
      );
      END_STATE();
    case 287:
      ADVANCE_MAP(
        ':', 760,
        'A', 522,
        'a', 522,
        'D', 397,
        'd', 397,
        'E', 670,
        'e', 670,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
      );
      END_STATE();
    case 288:
      ADVANCE_MAP(
        ':', 760,
        'A', 571,
        'a', 571,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'I', 727,
        'i', 727,
        'K', 663,
        'k', 663,
        'O', 647,
        'o', 647,
        'P', 436,
        'p', 436,
        'Q', 710,
        'q', 710,
        'R', 618,
        'r', 618,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
        'U', 557,
        'u', 557,
        'W', 445,
        'w', 445,
      );
      END_STATE();
    case 289:
      ADVANCE_MAP(
        ':', 760,
        'A', 571,
        'a', 571,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'I', 727,
        'i', 727,
        'K', 663,
        'k', 663,
        'O', 647,
        'o', 647,
        'P', 436,
        'p', 436,
        'Q', 710,
        'q', 710,
        'R', 622,
        'r', 622,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
        'U', 557,
        'u', 557,
        'W', 445,
        'w', 445,
      );
      END_STATE();
    case 290:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(679);
      END_STATE();
    case 291:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(415);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(891);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(437);
      END_STATE();
    case 292:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(417);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(891);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(437);
      END_STATE();
    case 293:
      ADVANCE_MAP(
        ':', 760,
        'C', 911,
        'c', 911,
        'I', 423,
        'i', 423,
        'L', 353,
        'l', 353,
        'O', 638,
        'o', 638,
        'S', 895,
        's', 895,
        'U', 490,
        'u', 490,
      );
      END_STATE();
    case 294:
      ADVANCE_MAP(
        ':', 760,
        'C', 911,
        'c', 911,
        'I', 423,
        'i', 423,
        'L', 353,
        'l', 353,
        'O', 639,
        'o', 639,
        'S', 895,
        's', 895,
        'U', 490,
        'u', 490,
      );
      END_STATE();
    case 295:
      ADVANCE_MAP(
        ':', 760,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'I', 503,
        'i', 503,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 395,
        't', 395,
        'X', 438,
        'x', 438,
      );
      END_STATE();
    case 296:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(486);
      END_STATE();
    case 297:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(320);
      END_STATE();
    case 298:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(880);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(910);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(339);
      END_STATE();
    case 299:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(326);
      END_STATE();
    case 300:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(594);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(580);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(332);
      END_STATE();
    case 301:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(593);
      END_STATE();
    case 302:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1022);
      END_STATE();
    case 303:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(404);
      END_STATE();
    case 304:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(523);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(895);
      END_STATE();
    case 305:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(433);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(723);
      END_STATE();
    case 306:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(495);
      END_STATE();
    case 307:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(583);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(332);
      END_STATE();
    case 308:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(682);
      END_STATE();
    case 309:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(483);
      END_STATE();
    case 310:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(900);
      END_STATE();
    case 311:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(904);
      END_STATE();
    case 312:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(645);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(341);
      END_STATE();
    case 313:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(905);
      END_STATE();
    case 314:
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      END_STATE();
    case 315:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(735);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(241);
      END_STATE();
    case 316:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(707);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(607);
      END_STATE();
    case 317:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(244);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(317);
      END_STATE();
    case 318:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(734);
      END_STATE();
    case 319:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(389);
      END_STATE();
    case 320:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(419);
      END_STATE();
    case 321:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(447);
      END_STATE();
    case 322:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(447);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(676);
      END_STATE();
    case 323:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(388);
      END_STATE();
    case 324:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(385);
      END_STATE();
    case 325:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(634);
      END_STATE();
    case 326:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(737);
      END_STATE();
    case 327:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(650);
      END_STATE();
    case 328:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(632);
      END_STATE();
    case 329:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(422);
      END_STATE();
    case 330:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(706);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(603);
      END_STATE();
    case 331:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(714);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(610);
      END_STATE();
    case 332:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      END_STATE();
    case 333:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(696);
      END_STATE();
    case 334:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(453);
      END_STATE();
    case 335:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(453);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(688);
      END_STATE();
    case 336:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(642);
      END_STATE();
    case 337:
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(643);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(993);
      END_STATE();
    case 338:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(390);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(927);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(938);
      END_STATE();
    case 339:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(371);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(414);
      END_STATE();
    case 340:
      ADVANCE_MAP(
        'A', 569,
        'a', 569,
        'I', 725,
        'i', 725,
        'O', 721,
        'o', 721,
        'P', 938,
        'p', 938,
        'R', 606,
        'r', 606,
      );
      END_STATE();
    case 341:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(432);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(588);
      END_STATE();
    case 342:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(449);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(589);
      END_STATE();
    case 343:
      ADVANCE_MAP(
        'A', 522,
        'a', 522,
        'D', 397,
        'd', 397,
        'E', 670,
        'e', 670,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'N', 433,
        'n', 433,
        'O', 723,
        'o', 723,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
      );
      END_STATE();
    case 344:
      ADVANCE_MAP(
        'A', 522,
        'a', 522,
        'D', 397,
        'd', 397,
        'E', 670,
        'e', 670,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
      );
      END_STATE();
    case 345:
      ADVANCE_MAP(
        'A', 571,
        'a', 571,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'I', 727,
        'i', 727,
        'K', 663,
        'k', 663,
        'O', 647,
        'o', 647,
        'P', 436,
        'p', 436,
        'Q', 710,
        'q', 710,
        'R', 618,
        'r', 618,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
        'U', 557,
        'u', 557,
        'W', 445,
        'w', 445,
      );
      END_STATE();
    case 346:
      ADVANCE_MAP(
        'A', 571,
        'a', 571,
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'I', 727,
        'i', 727,
        'K', 663,
        'k', 663,
        'O', 647,
        'o', 647,
        'P', 436,
        'p', 436,
        'Q', 710,
        'q', 710,
        'R', 622,
        'r', 622,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
        'U', 557,
        'u', 557,
        'W', 445,
        'w', 445,
      );
      END_STATE();
    case 347:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(679);
      END_STATE();
    case 348:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(653);
      END_STATE();
    case 349:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(570);
      END_STATE();
    case 350:
      ADVANCE_MAP(
        'A', 574,
        'a', 574,
        'I', 728,
        'i', 728,
        'O', 724,
        'o', 724,
        'P', 744,
        'p', 744,
        'R', 624,
        'r', 624,
      );
      END_STATE();
    case 351:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(713);
      END_STATE();
    case 352:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(415);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(891);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(437);
      END_STATE();
    case 353:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(524);
      END_STATE();
    case 354:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(417);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(891);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(437);
      END_STATE();
    case 355:
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(420);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(376);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(744);
      END_STATE();
    case 356:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 842,
        'c', 842,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 287,
        'r', 287,
        'S', 267,
        's', 267,
        'T', 837,
        't', 837,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 357:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 842,
        'c', 842,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 841,
        'r', 841,
        'S', 267,
        's', 267,
        'T', 837,
        't', 837,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 358:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 298,
        'c', 298,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 287,
        'r', 287,
        'S', 267,
        's', 267,
        'T', 252,
        't', 252,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 359:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 298,
        'c', 298,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 287,
        'r', 287,
        'S', 268,
        's', 268,
        'T', 252,
        't', 252,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 360:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 298,
        'c', 298,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 286,
        'r', 286,
        'S', 267,
        's', 267,
        'T', 252,
        't', 252,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 361:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 298,
        'c', 298,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 294,
        'p', 294,
        'Q', 312,
        'q', 312,
        'R', 287,
        'r', 287,
        'S', 267,
        's', 267,
        'T', 252,
        't', 252,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 362:
      ADVANCE_MAP(
        'B', 291,
        'b', 291,
        'C', 298,
        'c', 298,
        'D', 274,
        'd', 274,
        'E', 295,
        'e', 295,
        'F', 288,
        'f', 288,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 287,
        'r', 287,
        'S', 267,
        's', 267,
        'T', 254,
        't', 254,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 363:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 507,
        'c', 507,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 272,
        's', 272,
        'T', 253,
        't', 253,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 364:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 507,
        'c', 507,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 273,
        's', 273,
        'T', 253,
        't', 253,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 365:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 507,
        'c', 507,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 343,
        'r', 343,
        'S', 272,
        's', 272,
        'T', 253,
        't', 253,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 366:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 507,
        'c', 507,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 399,
        'p', 399,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 272,
        's', 272,
        'T', 253,
        't', 253,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 367:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 507,
        'c', 507,
        'D', 275,
        'd', 275,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 272,
        's', 272,
        'T', 255,
        't', 255,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 368:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 507,
        'c', 507,
        'D', 270,
        'd', 270,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 272,
        's', 272,
        'T', 253,
        't', 253,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 369:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 846,
        'c', 846,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 272,
        's', 272,
        'T', 838,
        't', 838,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 370:
      ADVANCE_MAP(
        'B', 352,
        'b', 352,
        'C', 846,
        'c', 846,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 345,
        'f', 345,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 845,
        'r', 845,
        'S', 272,
        's', 272,
        'T', 838,
        't', 838,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 371:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(890);
      END_STATE();
    case 372:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(559);
      END_STATE();
    case 373:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(561);
      END_STATE();
    case 374:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(562);
      END_STATE();
    case 375:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(563);
      END_STATE();
    case 376:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(942);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 377:
      ADVANCE_MAP(
        'B', 292,
        'b', 292,
        'C', 298,
        'c', 298,
        'D', 265,
        'd', 265,
        'E', 295,
        'e', 295,
        'F', 289,
        'f', 289,
        'H', 266,
        'h', 266,
        'I', 303,
        'i', 303,
        'K', 304,
        'k', 304,
        'L', 300,
        'l', 300,
        'N', 301,
        'n', 301,
        'P', 293,
        'p', 293,
        'Q', 312,
        'q', 312,
        'R', 287,
        'r', 287,
        'S', 267,
        's', 267,
        'T', 252,
        't', 252,
        'V', 261,
        'v', 261,
        'X', 314,
        'x', 314,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(282);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 378:
      ADVANCE_MAP(
        'B', 354,
        'b', 354,
        'C', 507,
        'c', 507,
        'D', 269,
        'd', 269,
        'E', 435,
        'e', 435,
        'F', 346,
        'f', 346,
        'H', 271,
        'h', 271,
        'I', 575,
        'i', 575,
        'K', 579,
        'k', 579,
        'L', 521,
        'l', 521,
        'N', 528,
        'n', 528,
        'P', 398,
        'p', 398,
        'Q', 709,
        'q', 709,
        'R', 344,
        'r', 344,
        'S', 272,
        's', 272,
        'T', 253,
        't', 253,
        'V', 262,
        'v', 262,
        'X', 732,
        'x', 732,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(316);
      END_STATE();
    case 379:
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(565);
      END_STATE();
    case 380:
      ADVANCE_MAP(
        'C', 938,
        'c', 938,
        'E', 726,
        'e', 726,
        'H', 457,
        'h', 457,
        'I', 577,
        'i', 577,
        'P', 517,
        'p', 517,
        'T', 932,
        't', 932,
      );
      END_STATE();
    case 381:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(993);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(945);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(992);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 382:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(993);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(942);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(970);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 383:
      ADVANCE_MAP(
        'C', 936,
        'c', 936,
        'I', 418,
        'i', 418,
        'O', 636,
        'o', 636,
        'U', 488,
        'u', 488,
      );
      END_STATE();
    case 384:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(848);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(323);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(847);
      END_STATE();
    case 385:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(848);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(848);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(848);
      END_STATE();
    case 386:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(848);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(848);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(847);
      END_STATE();
    case 387:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(848);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(847);
      END_STATE();
    case 388:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(914);
      END_STATE();
    case 389:
      ADVANCE_MAP(
        'C', 508,
        'c', 508,
        'D', 402,
        'd', 402,
        'H', 446,
        'h', 446,
        'S', 401,
        's', 401,
        'T', 646,
        't', 646,
      );
      END_STATE();
    case 390:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(538);
      END_STATE();
    case 391:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(934);
      END_STATE();
    case 392:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(934);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(322);
      END_STATE();
    case 393:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(895);
      END_STATE();
    case 394:
      ADVANCE_MAP(
        'C', 895,
        'c', 895,
        'E', 595,
        'e', 595,
        'R', 893,
        'r', 893,
        'T', 645,
        't', 645,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      END_STATE();
    case 395:
      ADVANCE_MAP(
        'C', 895,
        'c', 895,
        'R', 893,
        'r', 893,
        'S', 662,
        's', 662,
        'T', 645,
        't', 645,
      );
      END_STATE();
    case 396:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(895);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(893);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(645);
      END_STATE();
    case 397:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(895);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(645);
      END_STATE();
    case 398:
      ADVANCE_MAP(
        'C', 911,
        'c', 911,
        'I', 423,
        'i', 423,
        'L', 353,
        'l', 353,
        'O', 638,
        'o', 638,
        'S', 895,
        's', 895,
        'U', 490,
        'u', 490,
      );
      END_STATE();
    case 399:
      ADVANCE_MAP(
        'C', 911,
        'c', 911,
        'I', 423,
        'i', 423,
        'L', 353,
        'l', 353,
        'O', 639,
        'o', 639,
        'S', 895,
        's', 895,
        'U', 490,
        'u', 490,
      );
      END_STATE();
    case 400:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(249);
      END_STATE();
    case 401:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(249);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(248);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(247);
      END_STATE();
    case 402:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(249);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(646);
      END_STATE();
    case 403:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(835);
      END_STATE();
    case 404:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(835);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(448);
      END_STATE();
    case 405:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(283);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(843);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 406:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(844);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(843);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 407:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(844);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(843);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 408:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(878);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 409:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(299);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(285);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 410:
      ADVANCE_MAP(
        'C', 744,
        'c', 744,
        'E', 730,
        'e', 730,
        'H', 475,
        'h', 475,
        'I', 599,
        'i', 599,
        'P', 532,
        'p', 532,
        'T', 527,
        't', 527,
      );
      END_STATE();
    case 411:
      ADVANCE_MAP(
        'C', 661,
        'c', 661,
        'I', 426,
        'i', 426,
        'O', 640,
        'o', 640,
        'U', 492,
        'u', 492,
      );
      END_STATE();
    case 412:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(660);
      END_STATE();
    case 413:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(660);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(335);
      END_STATE();
    case 414:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(512);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(665);
      END_STATE();
    case 415:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(541);
      END_STATE();
    case 416:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(509);
      END_STATE();
    case 417:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(545);
      END_STATE();
    case 418:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(602);
      END_STATE();
    case 419:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(511);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(329);
      END_STATE();
    case 420:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(539);
      END_STATE();
    case 421:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(609);
      END_STATE();
    case 422:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(506);
      END_STATE();
    case 423:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(612);
      END_STATE();
    case 424:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(605);
      END_STATE();
    case 425:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(611);
      END_STATE();
    case 426:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(614);
      END_STATE();
    case 427:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(619);
      END_STATE();
    case 428:
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(836);
      END_STATE();
    case 429:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(914);
      END_STATE();
    case 430:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(732);
      END_STATE();
    case 431:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(256);
      END_STATE();
    case 432:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(909);
      END_STATE();
    case 433:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(243);
      END_STATE();
    case 434:
      ADVANCE_MAP(
        'D', 323,
        'd', 323,
        'S', 914,
        's', 914,
        'C', 848,
        'T', 848,
        'c', 848,
        't', 848,
      );
      END_STATE();
    case 435:
      ADVANCE_MAP(
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'I', 503,
        'i', 503,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 395,
        't', 395,
        'X', 438,
        'x', 438,
      );
      END_STATE();
    case 436:
      ADVANCE_MAP(
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 892,
        's', 892,
        'T', 396,
        't', 396,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      END_STATE();
    case 437:
      ADVANCE_MAP(
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 444,
        's', 444,
        'T', 396,
        't', 396,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      END_STATE();
    case 438:
      ADVANCE_MAP(
        'D', 397,
        'd', 397,
        'E', 669,
        'e', 669,
        'F', 663,
        'f', 663,
        'H', 443,
        'h', 443,
        'K', 663,
        'k', 663,
        'P', 663,
        'p', 663,
        'Q', 710,
        'q', 710,
        'R', 663,
        'r', 663,
        'S', 444,
        's', 444,
        'T', 394,
        't', 394,
      );
      END_STATE();
    case 439:
      ADVANCE_MAP(
        'D', 283,
        'd', 283,
        'S', 878,
        's', 878,
        'C', 844,
        'T', 844,
        'c', 844,
        't', 844,
      );
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 440:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(351);
      END_STATE();
    case 441:
      ADVANCE_MAP(
        'D', 393,
        'd', 393,
        'L', 333,
        'l', 333,
        'C', 895,
        'S', 895,
        'c', 895,
        's', 895,
      );
      END_STATE();
    case 442:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(393);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(476);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(733);
      END_STATE();
    case 443:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(393);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(733);
      END_STATE();
    case 444:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(393);
      if (lookahead == 'C' ||
          lookahead == 'S' ||
          lookahead == 'c' ||
          lookahead == 's') ADVANCE(895);
      END_STATE();
    case 445:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(627);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(914);
      END_STATE();
    case 446:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(400);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(646);
      END_STATE();
    case 447:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(468);
      END_STATE();
    case 448:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(465);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(687);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      END_STATE();
    case 449:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(708);
      END_STATE();
    case 450:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(471);
      END_STATE();
    case 451:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(260);
      END_STATE();
    case 452:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(328);
      END_STATE();
    case 453:
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(473);
      END_STATE();
    case 454:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(330);
      END_STATE();
    case 455:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(936);
      END_STATE();
    case 456:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(732);
      END_STATE();
    case 457:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(555);
      END_STATE();
    case 458:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(911);
      END_STATE();
    case 459:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(256);
      END_STATE();
    case 460:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(840);
      END_STATE();
    case 461:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(661);
      END_STATE();
    case 462:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(454);
      END_STATE();
    case 463:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(693);
      END_STATE();
    case 464:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(886);
      END_STATE();
    case 465:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(403);
      END_STATE();
    case 466:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(430);
      END_STATE();
    case 467:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(567);
      END_STATE();
    case 468:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(391);
      END_STATE();
    case 469:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(657);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      END_STATE();
    case 470:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(451);
      END_STATE();
    case 471:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(431);
      END_STATE();
    case 472:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(321);
      END_STATE();
    case 473:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(412);
      END_STATE();
    case 474:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(316);
      END_STATE();
    case 475:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(558);
      END_STATE();
    case 476:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(474);
      END_STATE();
    case 477:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(592);
      END_STATE();
    case 478:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(331);
      END_STATE();
    case 479:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(478);
      END_STATE();
    case 480:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(597);
      END_STATE();
    case 481:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(989);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 482:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(334);
      END_STATE();
    case 483:
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(373);
      END_STATE();
    case 484:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(936);
      END_STATE();
    case 485:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(911);
      END_STATE();
    case 486:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1022);
      END_STATE();
    case 487:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(661);
      END_STATE();
    case 488:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(484);
      END_STATE();
    case 489:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(258);
      END_STATE();
    case 490:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(485);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(548);
      END_STATE();
    case 491:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(486);
      END_STATE();
    case 492:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(487);
      END_STATE();
    case 493:
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(320);
      END_STATE();
    case 494:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(931);
      END_STATE();
    case 495:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(903);
      END_STATE();
    case 496:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(256);
      END_STATE();
    case 497:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(481);
      END_STATE();
    case 498:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(510);
      END_STATE();
    case 499:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(887);
      END_STATE();
    case 500:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(556);
      END_STATE();
    case 501:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(561);
      END_STATE();
    case 502:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(564);
      END_STATE();
    case 503:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(513);
      END_STATE();
    case 504:
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(514);
      END_STATE();
    case 505:
      ADVANCE_MAP(
        'H', 651,
        'h', 651,
        'O', 494,
        'o', 494,
        'R', 929,
        'r', 929,
        'W', 600,
        'w', 600,
      );
      END_STATE();
    case 506:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(914);
      END_STATE();
    case 507:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(880);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(910);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(339);
      END_STATE();
    case 508:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(248);
      END_STATE();
    case 509:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(246);
      END_STATE();
    case 510:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(689);
      END_STATE();
    case 511:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(326);
      END_STATE();
    case 512:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(463);
      END_STATE();
    case 513:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(715);
      END_STATE();
    case 514:
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(717);
      END_STATE();
    case 515:
      ADVANCE_MAP(
        'H', 659,
        'h', 659,
        'O', 497,
        'o', 497,
        'R', 382,
        'r', 382,
        'W', 620,
        'w', 620,
      );
      END_STATE();
    case 516:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(498);
      END_STATE();
    case 517:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(540);
      END_STATE();
    case 518:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(302);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 519:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(576);
      END_STATE();
    case 520:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(349);
      END_STATE();
    case 521:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(594);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(580);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(332);
      END_STATE();
    case 522:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(678);
      END_STATE();
    case 523:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(704);
      END_STATE();
    case 524:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(572);
      END_STATE();
    case 525:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(573);
      END_STATE();
    case 526:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(613);
      END_STATE();
    case 527:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(990);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 528:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(593);
      END_STATE();
    case 529:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(677);
      END_STATE();
    case 530:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(543);
      END_STATE();
    case 531:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(598);
      END_STATE();
    case 532:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(544);
      END_STATE();
    case 533:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(424);
      END_STATE();
    case 534:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(374);
      END_STATE();
    case 535:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(375);
      END_STATE();
    case 536:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(379);
      END_STATE();
    case 537:
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(504);
      END_STATE();
    case 538:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(926);
      END_STATE();
    case 539:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(337);
      END_STATE();
    case 540:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(455);
      END_STATE();
    case 541:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(336);
      END_STATE();
    case 542:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(466);
      END_STATE();
    case 543:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(460);
      END_STATE();
    case 544:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(461);
      END_STATE();
    case 545:
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(259);
      END_STATE();
    case 546:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(936);
      END_STATE();
    case 547:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(914);
      END_STATE();
    case 548:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(911);
      END_STATE();
    case 549:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(256);
      END_STATE();
    case 550:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(617);
      END_STATE();
    case 551:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(307);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 552:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(977);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(968);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 553:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(661);
      END_STATE();
    case 554:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(489);
      END_STATE();
    case 555:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(546);
      END_STATE();
    case 556:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(455);
      END_STATE();
    case 557:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(549);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(332);
      END_STATE();
    case 558:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(553);
      END_STATE();
    case 559:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(464);
      END_STATE();
    case 560:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(459);
      END_STATE();
    case 561:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(458);
      END_STATE();
    case 562:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(472);
      END_STATE();
    case 563:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(456);
      END_STATE();
    case 564:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(461);
      END_STATE();
    case 565:
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(482);
      END_STATE();
    case 566:
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(637);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(501);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(316);
      END_STATE();
    case 567:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(330);
      END_STATE();
    case 568:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(392);
      END_STATE();
    case 569:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(936);
      END_STATE();
    case 570:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(732);
      END_STATE();
    case 571:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(911);
      END_STATE();
    case 572:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(256);
      END_STATE();
    case 573:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1022);
      END_STATE();
    case 574:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(661);
      END_STATE();
    case 575:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(404);
      END_STATE();
    case 576:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(454);
      END_STATE();
    case 577:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(500);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(330);
      END_STATE();
    case 578:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(413);
      END_STATE();
    case 579:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(523);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(895);
      END_STATE();
    case 580:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(496);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(631);
      END_STATE();
    case 581:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(440);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(316);
      END_STATE();
    case 582:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(529);
      END_STATE();
    case 583:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(499);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(631);
      END_STATE();
    case 584:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(433);
      END_STATE();
    case 585:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(433);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(723);
      END_STATE();
    case 586:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(695);
      END_STATE();
    case 587:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(711);
      END_STATE();
    case 588:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(697);
      END_STATE();
    case 589:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(708);
      END_STATE();
    case 590:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(719);
      END_STATE();
    case 591:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(703);
      END_STATE();
    case 592:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(316);
      END_STATE();
    case 593:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(474);
      END_STATE();
    case 594:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(542);
      END_STATE();
    case 595:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(450);
      END_STATE();
    case 596:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(328);
      END_STATE();
    case 597:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(331);
      END_STATE();
    case 598:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(478);
      END_STATE();
    case 599:
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(502);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(331);
      END_STATE();
    case 600:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(330);
      END_STATE();
    case 601:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(297);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 602:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(690);
      END_STATE();
    case 603:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(494);
      END_STATE();
    case 604:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(296);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 605:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(693);
      END_STATE();
    case 606:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(586);
      END_STATE();
    case 607:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(495);
      END_STATE();
    case 608:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(493);
      END_STATE();
    case 609:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(649);
      END_STATE();
    case 610:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(497);
      END_STATE();
    case 611:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(652);
      END_STATE();
    case 612:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(705);
      END_STATE();
    case 613:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(570);
      END_STATE();
    case 614:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(701);
      END_STATE();
    case 615:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(316);
      END_STATE();
    case 616:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(491);
      END_STATE();
    case 617:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(583);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(332);
      END_STATE();
    case 618:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(587);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(895);
      END_STATE();
    case 619:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(655);
      END_STATE();
    case 620:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(331);
      END_STATE();
    case 621:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(668);
      END_STATE();
    case 622:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(590);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(895);
      END_STATE();
    case 623:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(681);
      END_STATE();
    case 624:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(591);
      END_STATE();
    case 625:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(682);
      END_STATE();
    case 626:
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(683);
      END_STATE();
    case 627:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(914);
      END_STATE();
    case 628:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(914);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(654);
      END_STATE();
    case 629:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(290);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 630:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(308);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 631:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(332);
      END_STATE();
    case 632:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(347);
      END_STATE();
    case 633:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(327);
      END_STATE();
    case 634:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(533);
      END_STATE();
    case 635:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(623);
      END_STATE();
    case 636:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(421);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(690);
      END_STATE();
    case 637:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(560);
      END_STATE();
    case 638:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(425);
      END_STATE();
    case 639:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(425);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(692);
      END_STATE();
    case 640:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(427);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(701);
      END_STATE();
    case 641:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(621);
      END_STATE();
    case 642:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(625);
      END_STATE();
    case 643:
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(626);
      END_STATE();
    case 644:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(330);
      END_STATE();
    case 645:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(895);
      END_STATE();
    case 646:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(249);
      END_STATE();
    case 647:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(731);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(581);
      END_STATE();
    case 648:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(305);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 649:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(569);
      END_STATE();
    case 650:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(585);
      END_STATE();
    case 651:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(462);
      END_STATE();
    case 652:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(571);
      END_STATE();
    case 653:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(452);
      END_STATE();
    case 654:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(596);
      END_STATE();
    case 655:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(574);
      END_STATE();
    case 656:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(483);
      END_STATE();
    case 657:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(680);
      END_STATE();
    case 658:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(331);
      END_STATE();
    case 659:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(479);
      END_STATE();
    case 660:
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(958);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 661:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 662:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      END_STATE();
    case 663:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(895);
      END_STATE();
    case 664:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(249);
      END_STATE();
    case 665:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(257);
      END_STATE();
    case 666:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(902);
      END_STATE();
    case 667:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(310);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 668:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(690);
      END_STATE();
    case 669:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(894);
      END_STATE();
    case 670:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(894);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(628);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(469);
      END_STATE();
    case 671:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(311);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 672:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(693);
      END_STATE();
    case 673:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(694);
      END_STATE();
    case 674:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(691);
      END_STATE();
    case 675:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(696);
      END_STATE();
    case 676:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(534);
      END_STATE();
    case 677:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(520);
      END_STATE();
    case 678:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(470);
      END_STATE();
    case 679:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(666);
      END_STATE();
    case 680:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(459);
      END_STATE();
    case 681:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(698);
      END_STATE();
    case 682:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(692);
      END_STATE();
    case 683:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(701);
      END_STATE();
    case 684:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(702);
      END_STATE();
    case 685:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(313);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 686:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(718);
      END_STATE();
    case 687:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(535);
      END_STATE();
    case 688:
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(536);
      END_STATE();
    case 689:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(330);
      END_STATE();
    case 690:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(936);
      END_STATE();
    case 691:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(932);
      END_STATE();
    case 692:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(732);
      END_STATE();
    case 693:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(911);
      END_STATE();
    case 694:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(900);
      END_STATE();
    case 695:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(926);
      END_STATE();
    case 696:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(904);
      END_STATE();
    case 697:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(908);
      END_STATE();
    case 698:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(937);
      END_STATE();
    case 699:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(306);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 700:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(309);
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 701:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(661);
      END_STATE();
    case 702:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(527);
      END_STATE();
    case 703:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(337);
      END_STATE();
    case 704:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(890);
      END_STATE();
    case 705:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(884);
      END_STATE();
    case 706:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(603);
      END_STATE();
    case 707:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(607);
      END_STATE();
    case 708:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(645);
      END_STATE();
    case 709:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(645);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(341);
      END_STATE();
    case 710:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(645);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(342);
      END_STATE();
    case 711:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(336);
      END_STATE();
    case 712:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(416);
      END_STATE();
    case 713:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(526);
      END_STATE();
    case 714:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(610);
      END_STATE();
    case 715:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(316);
      END_STATE();
    case 716:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(656);
      END_STATE();
    case 717:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(331);
      END_STATE();
    case 718:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(905);
      END_STATE();
    case 719:
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(259);
      END_STATE();
    case 720:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(372);
      END_STATE();
    case 721:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(644);
      END_STATE();
    case 722:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(633);
      END_STATE();
    case 723:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(584);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(243);
      END_STATE();
    case 724:
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(658);
      END_STATE();
    case 725:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(454);
      END_STATE();
    case 726:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(467);
      END_STATE();
    case 727:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(474);
      END_STATE();
    case 728:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(478);
      END_STATE();
    case 729:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(477);
      END_STATE();
    case 730:
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(480);
      END_STATE();
    case 731:
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(348);
      END_STATE();
    case 732:
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      END_STATE();
    case 733:
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(895);
      END_STATE();
    case 734:
      if (lookahead == 'C' ||
          lookahead == 'T' ||
          lookahead == 'c' ||
          lookahead == 't') ADVANCE(848);
      END_STATE();
    case 735:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(241);
      END_STATE();
    case 736:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(241);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 737:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(914);
      END_STATE();
    case 738:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1027);
      END_STATE();
    case 739:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(251);
      END_STATE();
    case 740:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(878);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 741:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(325);
      END_STATE();
    case 742:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(284);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 743:
      if (('0' <= lookahead && lookahead <= '9') ||
          ('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(281);
      END_STATE();
    case 744:
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 745:
      if (eof) ADVANCE(750);
      ADVANCE_MAP(
        '\n', 751,
        '\r', 239,
        '(', 1024,
        '-', 1875,
        '/', 1874,
        '\t', 753,
        ' ', 753,
        'B', 1641,
        'b', 1641,
        'C', 922,
        'c', 922,
        'D', 916,
        'd', 916,
        'E', 1686,
        'e', 1686,
        'F', 1647,
        'f', 1647,
        'H', 1626,
        'h', 1626,
        'I', 1778,
        'i', 1778,
        'J', 1808,
        'j', 1808,
        'K', 1790,
        'k', 1790,
        'L', 1703,
        'l', 1703,
        'M', 1642,
        'm', 1642,
        'N', 1746,
        'n', 1746,
        'O', 1794,
        'o', 1794,
        'P', 1668,
        'p', 1668,
        'Q', 1840,
        'q', 1840,
        'R', 1652,
        'r', 1652,
        'S', 1629,
        's', 1629,
        'T', 1615,
        't', 1615,
        'V', 1623,
        'v', 1623,
        'W', 1715,
        'w', 1715,
        'X', 1869,
        'x', 1869,
        ')', 1023,
        '*', 1023,
        '[', 1023,
        ']', 1023,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1025);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1877);
      END_STATE();
    case 746:
      if (eof) ADVANCE(750);
      ADVANCE_MAP(
        '\n', 751,
        '\r', 239,
        '(', 1024,
        '-', 1876,
        '/', 1874,
        '\t', 754,
        ' ', 754,
        'B', 1656,
        'b', 1656,
        'C', 1739,
        'c', 1739,
        'D', 1625,
        'd', 1625,
        'E', 1686,
        'e', 1686,
        'F', 1648,
        'f', 1648,
        'H', 1626,
        'h', 1626,
        'I', 1789,
        'i', 1789,
        'J', 1808,
        'j', 1808,
        'K', 1790,
        'k', 1790,
        'L', 1703,
        'l', 1703,
        'M', 1642,
        'm', 1642,
        'N', 1746,
        'n', 1746,
        'O', 1794,
        'o', 1794,
        'P', 1669,
        'p', 1669,
        'Q', 1840,
        'q', 1840,
        'R', 1652,
        'r', 1652,
        'S', 1630,
        's', 1630,
        'T', 1616,
        't', 1616,
        'V', 1623,
        'v', 1623,
        'W', 1715,
        'w', 1715,
        'X', 1869,
        'x', 1869,
        ')', 1023,
        '*', 1023,
        '[', 1023,
        ']', 1023,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1025);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1877);
      END_STATE();
    case 747:
      if (eof) ADVANCE(750);
      ADVANCE_MAP(
        '\n', 751,
        '\r', 239,
        '(', 1024,
        '/', 1874,
        '\t', 752,
        ' ', 752,
        'B', 1399,
        'b', 1399,
        'C', 1475,
        'c', 1475,
        'D', 1587,
        'd', 1587,
        'E', 1430,
        'e', 1430,
        'F', 1403,
        'f', 1403,
        'H', 1588,
        'h', 1588,
        'I', 1507,
        'i', 1507,
        'J', 1530,
        'j', 1530,
        'K', 1515,
        'k', 1515,
        'L', 1406,
        'l', 1406,
        'M', 1400,
        'm', 1400,
        'N', 1444,
        'n', 1444,
        'O', 1519,
        'o', 1519,
        'P', 1418,
        'p', 1418,
        'Q', 1561,
        'q', 1561,
        'R', 1589,
        'r', 1589,
        'S', 1593,
        's', 1593,
        'T', 1594,
        't', 1594,
        'V', 1595,
        'v', 1595,
        'W', 1453,
        'w', 1453,
        'X', 1605,
        'x', 1605,
        ')', 1023,
        '*', 1023,
        '[', 1023,
        ']', 1023,
        'A', 1586,
        'G', 1586,
        'U', 1586,
        'Y', 1586,
        'Z', 1586,
        'a', 1586,
        'g', 1586,
        'u', 1586,
        'y', 1586,
        'z', 1586,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1025);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1877);
      END_STATE();
    case 748:
      if (eof) ADVANCE(750);
      ADVANCE_MAP(
        '\n', 751,
        '\r', 239,
        '(', 1024,
        '/', 1874,
        '\t', 752,
        ' ', 752,
        'B', 1656,
        'b', 1656,
        'C', 1739,
        'c', 1739,
        'D', 1625,
        'd', 1625,
        'E', 1686,
        'e', 1686,
        'F', 1648,
        'f', 1648,
        'H', 1626,
        'h', 1626,
        'I', 1789,
        'i', 1789,
        'J', 1808,
        'j', 1808,
        'K', 1790,
        'k', 1790,
        'L', 1703,
        'l', 1703,
        'M', 1642,
        'm', 1642,
        'N', 1746,
        'n', 1746,
        'O', 1794,
        'o', 1794,
        'P', 1669,
        'p', 1669,
        'Q', 1840,
        'q', 1840,
        'R', 1652,
        'r', 1652,
        'S', 1630,
        's', 1630,
        'T', 1616,
        't', 1616,
        'V', 1623,
        'v', 1623,
        'W', 1715,
        'w', 1715,
        'X', 1869,
        'x', 1869,
        ')', 1023,
        '*', 1023,
        '[', 1023,
        ']', 1023,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1025);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1877);
      END_STATE();
    case 749:
      if (eof) ADVANCE(750);
      ADVANCE_MAP(
        '\n', 751,
        '\r', 239,
        '(', 1024,
        '/', 1874,
        'B', 1656,
        'b', 1656,
        'C', 1739,
        'c', 1739,
        'D', 1625,
        'd', 1625,
        'E', 1686,
        'e', 1686,
        'F', 1646,
        'f', 1646,
        'H', 1626,
        'h', 1626,
        'I', 1789,
        'i', 1789,
        'J', 1803,
        'j', 1803,
        'K', 1790,
        'k', 1790,
        'L', 1651,
        'l', 1651,
        'M', 1642,
        'm', 1642,
        'N', 1704,
        'n', 1704,
        'O', 1794,
        'o', 1794,
        'P', 1669,
        'p', 1669,
        'Q', 1840,
        'q', 1840,
        'R', 1631,
        'r', 1631,
        'S', 1628,
        's', 1628,
        'T', 1616,
        't', 1616,
        'V', 1623,
        'v', 1623,
        'W', 1715,
        'w', 1715,
        'X', 1869,
        'x', 1869,
        ')', 1023,
        '*', 1023,
        '[', 1023,
        ']', 1023,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1025);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead) &&
          lookahead != ' ') ADVANCE(1877);
      END_STATE();
    case 750:
      ACCEPT_TOKEN(ts_builtin_sym_end);
      END_STATE();
    case 751:
      ACCEPT_TOKEN(aux_sym_pattern_token1);
      END_STATE();
    case 752:
      ACCEPT_TOKEN(sym__space);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(752);
      END_STATE();
    case 753:
      ACCEPT_TOKEN(sym__space);
      ADVANCE_MAP(
        '\t', 752,
        ' ', 752,
        'B', 338,
        'b', 338,
        'C', 933,
        'c', 933,
        'D', 928,
        'd', 928,
        'E', 516,
        'e', 516,
        'F', 340,
        'f', 340,
        'I', 568,
        'i', 568,
        'N', 519,
        'n', 519,
        'P', 383,
        'p', 383,
        'S', 380,
        's', 380,
        'T', 505,
        't', 505,
        'V', 263,
        'v', 263,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(330);
      END_STATE();
    case 754:
      ACCEPT_TOKEN(sym__space);
      ADVANCE_MAP(
        '\t', 752,
        ' ', 752,
        'B', 355,
        'b', 355,
        'C', 552,
        'c', 552,
        'D', 381,
        'd', 381,
        'E', 537,
        'e', 537,
        'F', 350,
        'f', 350,
        'I', 578,
        'i', 578,
        'N', 531,
        'n', 531,
        'P', 411,
        'p', 411,
        'S', 410,
        's', 410,
        'T', 515,
        't', 515,
        'V', 264,
        'v', 264,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(331);
      END_STATE();
    case 755:
      ACCEPT_TOKEN(sym_comment);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead) ||
          (0x0b <= lookahead && lookahead <= '\r') ||
          ('(' <= lookahead && lookahead <= '*') ||
          lookahead == '[' ||
          lookahead == ']') ADVANCE(756);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(755);
      END_STATE();
    case 756:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead != 0 &&
          lookahead != '\n') ADVANCE(756);
      END_STATE();
    case 757:
      ACCEPT_TOKEN(sym_heading);
      if (lookahead != 0 &&
          lookahead != '\n') ADVANCE(757);
      END_STATE();
    case 758:
      ACCEPT_TOKEN(sym_label);
      END_STATE();
    case 759:
      ACCEPT_TOKEN(sym_label);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead) &&
          lookahead != ' ') ADVANCE(1873);
      END_STATE();
    case 760:
      ACCEPT_TOKEN(sym_field);
      END_STATE();
    case 761:
      ACCEPT_TOKEN(sym_count);
      END_STATE();
    case 762:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '\'', 429,
        '/', 276,
        ':', 760,
        'R', 1035,
        'r', 1035,
        'S', 787,
        's', 787,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 763:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '\'', 429,
        ':', 760,
        'R', 1095,
        'r', 1095,
        'S', 810,
        's', 810,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_2, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 764:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '.', 914,
        ':', 760,
        'A', 1114,
        'a', 1114,
        'D', 1081,
        'd', 1081,
        'E', 1142,
        'e', 1142,
        'F', 1140,
        'f', 1140,
        'H', 1089,
        'h', 1089,
        'K', 1140,
        'k', 1140,
        'P', 1140,
        'p', 1140,
        'Q', 1153,
        'q', 1153,
        'R', 1140,
        'r', 1140,
        'S', 789,
        's', 789,
        'T', 1080,
        't', 1080,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 765:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '.', 914,
        ':', 760,
        'H', 823,
        'h', 823,
        'L', 806,
        'l', 806,
        'R', 1075,
        'r', 1075,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 766:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '.') ADVANCE(914);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(814);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 767:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '.') ADVANCE(914);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 768:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1029);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 769:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'B', 780,
        'b', 780,
        'C', 772,
        'c', 772,
        'D', 1030,
        'd', 1030,
        'F', 780,
        'f', 780,
        'S', 772,
        's', 772,
        'T', 1053,
        't', 1053,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 770:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'B', 780,
        'b', 780,
        'C', 772,
        'c', 772,
        'F', 780,
        'f', 780,
        'S', 773,
        's', 773,
        'T', 1052,
        't', 1052,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 771:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'B', 780,
        'b', 780,
        'F', 780,
        'f', 780,
        'S', 772,
        's', 772,
        'T', 1053,
        't', 1053,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 772:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'B', 780,
        'b', 780,
        'F', 780,
        'f', 780,
        'S', 773,
        's', 773,
        'T', 1053,
        't', 1053,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 773:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'B', 780,
        'b', 780,
        'F', 780,
        'f', 780,
        'T', 1053,
        't', 1053,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 774:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1049,
        'e', 1049,
        'O', 1060,
        'o', 1060,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 775:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1072);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 776:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1061);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 777:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1068,
        'e', 1068,
        'S', 787,
        's', 787,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 778:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'I', 1067,
        'i', 1067,
        'S', 787,
        's', 787,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 779:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1033);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 780:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'P', 785,
        'p', 785,
        'T', 1053,
        't', 1053,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 781:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'R', 772,
        'r', 772,
        'U', 1056,
        'u', 1056,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 782:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'R', 1071,
        'r', 1071,
        'T', 1057,
        't', 1057,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 783:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'S', 787,
        's', 787,
        'U', 1062,
        'u', 1062,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 784:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 785:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1053);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 786:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 787,
        'S', 787,
        'd', 787,
        's', 787,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 787:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 788:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1079);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 789:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 803,
        'b', 803,
        'C', 792,
        'c', 792,
        'D', 1082,
        'd', 1082,
        'F', 803,
        'f', 803,
        'S', 792,
        's', 792,
        'T', 1126,
        't', 1126,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 790:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 803,
        'b', 803,
        'C', 792,
        'c', 792,
        'F', 803,
        'f', 803,
        'S', 793,
        's', 793,
        'T', 1125,
        't', 1125,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 791:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 803,
        'b', 803,
        'F', 803,
        'f', 803,
        'S', 792,
        's', 792,
        'T', 1126,
        't', 1126,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 792:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 803,
        'b', 803,
        'F', 803,
        'f', 803,
        'S', 793,
        's', 793,
        'T', 1126,
        't', 1126,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 793:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'B', 803,
        'b', 803,
        'F', 803,
        'f', 803,
        'T', 1126,
        't', 1126,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 794:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1117);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1137);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 795:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1162);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 796:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'E', 1139,
        'e', 1139,
        'I', 1152,
        'i', 1152,
        'S', 810,
        's', 810,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 797:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1139);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 798:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1139);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 799:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1157);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 800:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1158);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 801:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1159);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 802:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1094);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 803:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(808);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1126);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 804:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(792);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1132);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 805:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1160);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1134);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 806:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1145);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 807:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 808:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1126);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 809:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 810:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 811:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 356,
        ' ', 15,
        '-', 363,
        '.', 879,
        ':', 760,
        'C', 792,
        'c', 792,
        'D', 1081,
        'd', 1081,
        'E', 1143,
        'e', 1143,
        'F', 1140,
        'f', 1140,
        'H', 1088,
        'h', 1088,
        'K', 1140,
        'k', 1140,
        'P', 1140,
        'p', 1140,
        'Q', 1153,
        'q', 1153,
        'R', 813,
        'r', 813,
        'S', 1087,
        's', 1087,
        'T', 1080,
        't', 1080,
        'U', 1122,
        'u', 1122,
        'W', 1127,
        'w', 1127,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 812:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 408,
        ' ', 30,
        '/', 276,
        ':', 760,
        'B', 780,
        'b', 780,
        'C', 772,
        'c', 772,
        'E', 1029,
        'e', 1029,
        'F', 780,
        'f', 780,
        'I', 1054,
        'i', 1054,
        'S', 772,
        's', 772,
        'T', 1052,
        't', 1052,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 813:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 408,
        ' ', 30,
        ':', 760,
        'B', 803,
        'b', 803,
        'C', 792,
        'c', 792,
        'E', 1079,
        'e', 1079,
        'F', 803,
        'f', 803,
        'I', 1130,
        'i', 1130,
        'S', 792,
        's', 792,
        'T', 1125,
        't', 1125,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 814:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(408);
      if (lookahead == ' ') ADVANCE(30);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 815:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(601);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(816);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 816:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(601);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 817:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(601);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(818);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 818:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(601);
      if (lookahead == ' ') ADVANCE(138);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 819:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(551);
      if (lookahead == ' ') ADVANCE(109);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 820:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(551);
      if (lookahead == ' ') ADVANCE(109);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 821:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 742,
        ' ', 206,
        '/', 276,
        ':', 760,
        'A', 1045,
        'a', 1045,
        'S', 787,
        's', 787,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 822:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(742);
      if (lookahead == ' ') ADVANCE(206);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 823:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(742);
      if (lookahead == ' ') ADVANCE(206);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1111);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 824:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(742);
      if (lookahead == ' ') ADVANCE(206);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 825:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(700);
      if (lookahead == ' ') ADVANCE(193);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(826);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 826:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(700);
      if (lookahead == ' ') ADVANCE(193);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 827:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 828:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 829:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 671,
        ' ', 169,
        '/', 276,
        ':', 760,
        'I', 1055,
        'i', 1055,
        'S', 1066,
        's', 1066,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 830:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 831:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1131);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1151);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 832:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 833:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(429);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1188);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 834:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(429);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1194);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 835:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(429);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1258);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(aux_sym__other_token1_character_set_2, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 836:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\'') ADVANCE(429);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1268);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(aux_sym__other_token1_character_set_2, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 837:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '-', 363,
        '.', 879,
        ':', 760,
        '\t', 369,
        ' ', 369,
        'C', 895,
        'c', 895,
        'D', 1243,
        'd', 1243,
        'E', 1308,
        'e', 1308,
        'F', 1305,
        'f', 1305,
        'H', 1250,
        'h', 1250,
        'K', 1305,
        'k', 1305,
        'P', 1305,
        'p', 1305,
        'Q', 1320,
        'q', 1320,
        'R', 882,
        'r', 882,
        'S', 1249,
        's', 1249,
        'T', 1242,
        't', 1242,
        'U', 1288,
        'u', 1288,
        'W', 1290,
        'w', 1290,
      );
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 838:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '-', 363,
        '.', 879,
        '\t', 369,
        ' ', 369,
        'C', 895,
        'c', 895,
        'D', 1243,
        'd', 1243,
        'E', 1308,
        'e', 1308,
        'F', 1305,
        'f', 1305,
        'H', 1250,
        'h', 1250,
        'K', 1305,
        'k', 1305,
        'P', 1305,
        'p', 1305,
        'Q', 1320,
        'q', 1320,
        'R', 882,
        'r', 882,
        'S', 1249,
        's', 1249,
        'T', 1242,
        't', 1242,
        'U', 1288,
        'u', 1288,
        'W', 1290,
        'w', 1290,
      );
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 839:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 840:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 841:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '.', 914,
        ':', 760,
        'A', 1279,
        'a', 1279,
        'D', 1243,
        'd', 1243,
        'E', 1307,
        'e', 1307,
        'F', 1305,
        'f', 1305,
        'H', 1251,
        'h', 1251,
        'K', 1305,
        'k', 1305,
        'P', 1305,
        'p', 1305,
        'Q', 1320,
        'q', 1320,
        'R', 1305,
        'r', 1305,
        'S', 892,
        's', 892,
        'T', 1242,
        't', 1242,
      );
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 842:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '.', 914,
        ':', 760,
        'H', 880,
        'h', 880,
        'L', 910,
        'l', 910,
        'R', 1236,
        'r', 1236,
      );
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 843:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(914);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(883);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 844:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(914);
      if (lookahead == ':') ADVANCE(760);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 845:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '.', 914,
        'A', 1279,
        'a', 1279,
        'D', 1243,
        'd', 1243,
        'E', 1307,
        'e', 1307,
        'F', 1305,
        'f', 1305,
        'H', 1251,
        'h', 1251,
        'K', 1305,
        'k', 1305,
        'P', 1305,
        'p', 1305,
        'Q', 1320,
        'q', 1320,
        'R', 1305,
        'r', 1305,
        'S', 892,
        's', 892,
        'T', 1242,
        't', 1242,
      );
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 846:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(914);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(880);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(910);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1236);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 847:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(914);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(883);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 848:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '.') ADVANCE(914);
      if (set_contains(aux_sym__other_token1_character_set_1, 454, lookahead)) ADVANCE(1331);
      END_STATE();
    case 849:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(741);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1200);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 850:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(741);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 851:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 276,
        '\t', 388,
        ' ', 388,
        'B', 870,
        'b', 870,
        'C', 861,
        'c', 861,
        'E', 1182,
        'e', 1182,
        'F', 870,
        'f', 870,
        'I', 1210,
        'i', 1210,
        'S', 861,
        's', 861,
        'T', 1207,
        't', 1207,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 852:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(608);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(853);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 853:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(608);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 854:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(550);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 855:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1209);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1221);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 856:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 857:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1182);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 858:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 276,
        'B', 870,
        'b', 870,
        'C', 861,
        'c', 861,
        'D', 1183,
        'd', 1183,
        'F', 870,
        'f', 870,
        'S', 861,
        's', 861,
        'T', 1208,
        't', 1208,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 859:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 276,
        'B', 870,
        'b', 870,
        'C', 861,
        'c', 861,
        'F', 870,
        'f', 870,
        'S', 862,
        's', 862,
        'T', 1207,
        't', 1207,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 860:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 276,
        'B', 870,
        'b', 870,
        'F', 870,
        'f', 870,
        'S', 861,
        's', 861,
        'T', 1208,
        't', 1208,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 861:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '/', 276,
        'B', 870,
        'b', 870,
        'F', 870,
        'f', 870,
        'S', 862,
        's', 862,
        'T', 1208,
        't', 1208,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 862:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(870);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(870);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1208);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 863:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(877);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 864:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1204);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1215);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 865:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1229);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 866:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1216);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 867:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1224);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 868:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1225);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 869:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1186);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 870:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(875);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1208);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 871:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(861);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1211);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 872:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1228);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1212);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 873:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1217);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 874:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 875:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1208);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1220);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 876:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 877:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 878:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == ':') ADVANCE(760);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 879:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(734);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 880:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(741);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 881:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(741);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 882:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        '\t', 388,
        ' ', 388,
        'B', 907,
        'b', 907,
        'C', 895,
        'c', 895,
        'E', 1241,
        'e', 1241,
        'F', 907,
        'f', 907,
        'I', 1295,
        'i', 1295,
        'S', 895,
        's', 895,
        'T', 1291,
        't', 1291,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 883:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(388);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 884:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(608);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(885);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 885:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(608);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 886:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(550);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 887:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(716);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(888);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 888:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(716);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 889:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1296);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1316);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 890:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 891:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1241);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 892:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 907,
        'b', 907,
        'C', 895,
        'c', 895,
        'D', 1244,
        'd', 1244,
        'F', 907,
        'f', 907,
        'S', 895,
        's', 895,
        'T', 1292,
        't', 1292,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 893:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 907,
        'b', 907,
        'C', 895,
        'c', 895,
        'F', 907,
        'f', 907,
        'S', 896,
        's', 896,
        'T', 1291,
        't', 1291,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 894:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 907,
        'b', 907,
        'F', 907,
        'f', 907,
        'S', 895,
        's', 895,
        'T', 1292,
        't', 1292,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 895:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      ADVANCE_MAP(
        'B', 907,
        'b', 907,
        'F', 907,
        'f', 907,
        'S', 896,
        's', 896,
        'T', 1292,
        't', 1292,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 896:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(907);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(907);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1292);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 897:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(914);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 898:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1282);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1302);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 899:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1330);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 900:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1304);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1319);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 901:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1304);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 902:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1304);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 903:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1324);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 904:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1325);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 905:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1326);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 906:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1256);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 907:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(912);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1292);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 908:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(895);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1297);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 909:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1327);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1299);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 910:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1310);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 911:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 912:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1292);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1318);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 913:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 914:
      ACCEPT_TOKEN(aux_sym_stitch_token1);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 915:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      END_STATE();
    case 916:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 387,
        ' ', 387,
        'B', 1766,
        'b', 1766,
        'C', 861,
        'c', 861,
        'E', 1671,
        'e', 1671,
        'O', 1860,
        'o', 1860,
        'T', 1818,
        't', 1818,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 917:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(635);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 918:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '/', 276,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 919:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '/', 276,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 1697,
        's', 1697,
        'T', 1664,
        't', 1664,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 920:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1829);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 921:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1858);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(925);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 922:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      ADVANCE_MAP(
        '/', 276,
        'H', 849,
        'h', 849,
        'L', 873,
        'l', 873,
        'O', 1792,
        'o', 1792,
        'R', 1643,
        'r', 1643,
        'U', 1844,
        'u', 1844,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 923:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1855);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(925);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1732);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 924:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(925);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 925:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 926:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(641);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(993);
      END_STATE();
    case 927:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(941);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 928:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(938);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(943);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(991);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 929:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(938);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(941);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(969);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 930:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(976);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 931:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(988);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 932:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(984);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 933:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(935);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(967);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 934:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(950);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 935:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(938);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(979);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 936:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 937:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(915);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      END_STATE();
    case 938:
      ACCEPT_TOKEN(aux_sym_stitch_token2);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 939:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(980);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 940:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(981);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 941:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(965);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 942:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(966);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 943:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(934);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 944:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(960);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 945:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(975);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 946:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(959);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 947:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(963);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 948:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(962);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 949:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(936);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 950:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(939);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 951:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(973);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 952:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(971);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 953:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(974);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 954:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(978);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 955:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(983);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 956:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(972);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 957:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(986);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 958:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(940);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 959:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(930);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 960:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(955);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 961:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(952);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 962:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(954);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 963:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(957);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 964:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(956);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 965:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(949);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 966:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(954);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 967:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(944);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 968:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(947);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 969:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(965);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 970:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(966);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 971:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 972:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 973:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(936);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 974:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(978);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 975:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(958);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 976:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(938);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 977:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(982);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 978:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(993);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 979:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(985);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 980:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(949);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 981:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(954);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 982:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(987);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 983:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(936);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 984:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(946);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 985:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(951);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 986:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(978);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 987:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(953);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 988:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(961);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 989:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(964);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 990:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(948);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 991:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(941);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 992:
      ACCEPT_TOKEN(sym__no_more);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(942);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 993:
      ACCEPT_TOKEN(sym__no_more);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(993);
      END_STATE();
    case 994:
      ACCEPT_TOKEN(sym_action);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1333,
        'e', 1333,
        'S', 1002,
        's', 1002,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 995:
      ACCEPT_TOKEN(sym_action);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1335,
        'e', 1335,
        'I', 1345,
        'i', 1345,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 996:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1335);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 997:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1348);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 998:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1339);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 999:
      ACCEPT_TOKEN(sym_action);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'R', 1352,
        'r', 1352,
        'U', 1343,
        'u', 1343,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1000:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1001:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1002:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1003:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1354);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1393);
      END_STATE();
    case 1004:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(518);
      if (lookahead == ' ') ADVANCE(99);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1005:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(629);
      if (lookahead == ' ') ADVANCE(153);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1006:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(604);
      if (lookahead == ' ') ADVANCE(140);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1337);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1007:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '\t') ADVANCE(604);
      if (lookahead == ' ') ADVANCE(140);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1008:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(632);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1009:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(616);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1370);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1010:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(616);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1011:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(525);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1012:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1364);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1013:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1367);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1380);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1014:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1367);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1015:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1385);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1016:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1372);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1017:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1390);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1377);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1018:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1390);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1381);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1019:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1020:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1021:
      ACCEPT_TOKEN(sym_action);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1022:
      ACCEPT_TOKEN(sym_action);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1393);
      END_STATE();
    case 1023:
      ACCEPT_TOKEN(sym_bracket);
      END_STATE();
    case 1024:
      ACCEPT_TOKEN(sym_bracket);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(317);
      END_STATE();
    case 1025:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(738);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(707);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1395);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1026);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1396);
      END_STATE();
    case 1026:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(738);
      if (lookahead == '/') ADVANCE(276);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1026);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1396);
      END_STATE();
    case 1027:
      ACCEPT_TOKEN(sym_number);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1027);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1397);
      END_STATE();
    case 1028:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1063);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1029:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1048);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1030:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(772);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1031:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1042);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1032:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1043);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1033:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1034:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1035:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1028);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1036:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(786);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1037:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1001);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1038:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1058);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1039:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1059);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1040:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1041:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1037);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1042:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(776);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1043:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(775);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1044:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1039);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1045:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'I', 1051,
        'i', 1051,
        'N', 1041,
        'n', 1041,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1046:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1070);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1047:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1048:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1033);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1049:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1047);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1050:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1034);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1051:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(822);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1052:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'O', 1040,
        'o', 1040,
        'R', 772,
        'r', 772,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1053:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1040);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1054:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(779);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1055:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1173);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1056:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1050);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1057:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(772);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1058:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1059:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1060:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1064);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1061:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1062:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1069);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1063:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1036);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1064:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1168);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1065:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1046);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1066:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(778);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1067:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1031);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1068:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1044);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1069:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1038);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1070:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1032);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1071:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1056);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1072:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 787,
        'S', 787,
        'd', 787,
        's', 787,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1073:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1074:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1091);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1123);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1075:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1078);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1083);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1076:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1124);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1077:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1146);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1078:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(832);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1079:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1118);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1080:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'C', 792,
        'c', 792,
        'R', 790,
        'r', 790,
        'T', 1134,
        't', 1134,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1081:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(792);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1134);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1082:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1083:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1109);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1141);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1084:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1107);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1085:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1106);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1086:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1108);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1087:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 1082,
        'd', 1082,
        'L', 1171,
        'l', 1171,
        'C', 792,
        'S', 792,
        'c', 792,
        's', 792,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1088:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'D', 1082,
        'd', 1082,
        'R', 1100,
        'r', 1100,
        'T', 1161,
        't', 1161,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1089:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1082);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1161);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1090:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1170);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1091:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1154);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1092:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1172);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1093:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1094:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1095:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1077);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1096:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1170);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1097:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(809);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1098:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1164);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1099:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1135);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1100:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1098);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1101:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1133);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1102:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1149);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1103:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1092);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1104:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1105:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(799);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1106:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(798);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1107:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(797);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1108:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(795);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1109:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1102);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1110:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1101);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1111:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1121);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1112:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1076);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1113:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1144);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1114:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1147);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1115:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1159);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1116:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1117:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1116);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1118:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1094);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1119:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1093);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1120:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1167);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1121:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(824);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1122:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1113);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1123:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1154);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1124:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1166);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1125:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1104);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1126:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1104);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1127:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1164);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1128:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1105);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1129:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(810);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1136);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1130:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(802);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1131:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1174);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1132:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1119);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1133:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1134:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1135:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1136:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1120);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1137:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1150);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1138:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1148);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1139:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1140:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1141:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1169);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1142:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        ':', 760,
        'S', 791,
        's', 791,
        'T', 1129,
        't', 1129,
        'V', 1165,
        'v', 1165,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1143:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(791);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1144:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1112);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1145:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1156);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1146:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1097);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1147:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1103);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1148:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1096);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1149:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(807);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1150:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1170);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1151:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(800);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1152:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1084);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1153:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1134);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1074);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1154:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1134);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1155:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1115);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1156:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1099);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1157:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1110);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1158:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1085);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1159:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1086);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1160:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1132);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1161:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(792);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1162:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(810);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1163:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1164:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(699);
      if (lookahead == ' ') ADVANCE(189);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1128);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1165:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1138);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1166:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1167:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(629);
      if (lookahead == ' ') ADVANCE(153);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1168:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1169:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1090);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1170:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1171:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1151);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1172:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(377);
      if (lookahead == ' ') ADVANCE(26);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1173:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(685);
      if (lookahead == ' ') ADVANCE(178);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1065);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1073);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1174:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t') ADVANCE(685);
      if (lookahead == ' ') ADVANCE(178);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1155);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1163);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1175:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1176:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1252);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1177:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1178:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(378);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1179:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(686);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1223);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1180:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1218);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1181:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1219);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1182:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1203);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1183:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1184:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1197);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1185:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1198);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1186:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1187:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1188:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1180);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1189:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(863);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1190:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(876);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1191:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1020);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1192:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1213);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1193:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1214);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1194:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1181);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1195:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1196:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1191);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1197:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(866);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1198:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(865);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1199:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1193);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1200:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1206);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1196);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1201:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1227);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1202:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1203:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1186);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1204:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1202);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1205:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1187);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1206:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(850);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1207:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1195);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1208:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1195);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1209:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1179);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1210:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(869);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1211:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1205);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1212:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1213:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1214:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1215:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1222);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1216:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1217:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1226);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1218:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1189);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1219:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1190);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1220:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1208);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1221:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(868);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1222:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1175);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1223:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1201);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1224:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1199);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1225:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1184);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1226:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1192);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1227:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1185);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1228:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1211);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1229:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1230:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1230);
      END_STATE();
    case 1231:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(707);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1293);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1232:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(632);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1233:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1316);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1234:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(686);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1322);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1235:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1254);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1289);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1236:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1240);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1245);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1237:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1286);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1238:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1311);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1239:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1313);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1240:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(890);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1241:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1283);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1242:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(895);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(893);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1299);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1243:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(895);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1299);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1244:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(895);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1245:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1274);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1306);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1246:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1272);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1247:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1271);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1248:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1273);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1249:
      ACCEPT_TOKEN(aux_sym__other_token1);
      ADVANCE_MAP(
        'D', 1244,
        'd', 1244,
        'L', 1233,
        'l', 1233,
        'C', 895,
        'S', 895,
        'c', 895,
        's', 895,
      );
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1250:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1244);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1263);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1329);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1251:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1244);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1329);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1252:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1177);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1253:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1178);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1254:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1321);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1255:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1256:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(911);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1257:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1231);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1258:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1238);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1259:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1177);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1260:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(913);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1261:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(897);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1262:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1300);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1263:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1257);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1264:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1253);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1265:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1298);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1266:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1303);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1267:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1315);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1268:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1239);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1269:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(911);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1270:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(903);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1271:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(902);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1272:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(901);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1273:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(899);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1274:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1267);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1275:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1265);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1276:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1285);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1277:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1237);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1278:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1309);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1279:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1312);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1280:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1326);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1281:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(911);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1282:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1281);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1283:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1256);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1284:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1255);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1285:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(881);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1286:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1328);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1287:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1232);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1288:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1278);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1289:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1321);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1290:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1231);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1291:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1269);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(895);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1292:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1269);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1293:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1270);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1294:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(914);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1301);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1295:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(906);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1296:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1234);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1297:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1284);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1298:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1299:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(895);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1300:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(911);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1301:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1287);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1302:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1317);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1303:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1314);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1304:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1305:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(895);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1306:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1176);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1307:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(894);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1294);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1266);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1308:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(894);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1309:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1277);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1310:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1323);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1311:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1260);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1312:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1264);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1313:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1261);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1314:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1259);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1315:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(911);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1316:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(904);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1317:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1177);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1318:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1292);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1319:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1246);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1320:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1299);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1235);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1321:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1299);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1322:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1280);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1323:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1262);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1324:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1275);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1325:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1247);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1326:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1248);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1327:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1297);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1328:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      if (set_contains(aux_sym__other_token1_character_set_4, 456, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1329:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(895);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1330:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (lookahead == 'D' ||
          lookahead == 'S' ||
          lookahead == 'd' ||
          lookahead == 's') ADVANCE(914);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1331:
      ACCEPT_TOKEN(aux_sym__other_token1);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1331);
      END_STATE();
    case 1332:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1349);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1333:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1350);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1334:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1351);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1335:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1336:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1357);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1337:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1007);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1338:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1334);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1339:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1335);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1340:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(777);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1341:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1356);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1342:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1347);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1343:
      ACCEPT_TOKEN(aux_sym__other_token2);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'N', 1338,
        'n', 1338,
        'R', 1355,
        'r', 1355,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1344:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1358);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1345:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1341);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1346:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1340);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1347:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1344);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1348:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(998);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1349:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1336);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1350:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1000);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1351:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1342);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1352:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1332);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1353:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1354:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1354);
      if (set_contains(sym__no_more_character_set_2, 455, lookahead)) ADVANCE(1393);
      END_STATE();
    case 1355:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(699);
      if (lookahead == ' ') ADVANCE(189);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1346);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1356:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(648);
      if (lookahead == ' ') ADVANCE(160);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1357:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(629);
      if (lookahead == ' ') ADVANCE(153);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1358:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '\t') ADVANCE(360);
      if (lookahead == ' ') ADVANCE(19);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1353);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1359:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(365);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1360:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(707);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1382);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1361:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(650);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1362:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(632);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1363:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1386);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1364:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1387);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1365:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1388);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1366:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1389);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1367:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1368:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1362);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1369:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1365);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1370:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1010);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1371:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1366);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1372:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1367);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1373:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(867);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1374:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1361);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1375:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1383);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1376:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1384);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1377:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1369);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1360);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1378:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1359);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1379:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1391);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1380:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1374);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1381:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1371);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1360);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1382:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1373);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1383:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1378);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1384:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1379);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1385:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1016);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1386:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1368);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1387:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1019);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1388:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1375);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1389:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1376);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1390:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1363);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1391:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1392:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1392);
      END_STATE();
    case 1393:
      ACCEPT_TOKEN(aux_sym__other_token2);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1393);
      END_STATE();
    case 1394:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(867);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1396);
      END_STATE();
    case 1395:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1394);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1396);
      END_STATE();
    case 1396:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1396);
      END_STATE();
    case 1397:
      ACCEPT_TOKEN(aux_sym__other_token3);
      if (set_contains(sym__no_more_character_set_1, 453, lookahead)) ADVANCE(1397);
      END_STATE();
    case 1398:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '-') ADVANCE(722);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1539);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1399:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1422,
        'a', 1422,
        'O', 768,
        'o', 768,
        'P', 1602,
        'p', 1602,
        'R', 1454,
        'r', 1454,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1400:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1492,
        'a', 1492,
        'I', 1557,
        'i', 1557,
        'O', 1543,
        'o', 1543,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1401:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1411,
        'a', 1411,
        'O', 1423,
        'o', 1423,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1402:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1425);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1403:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1508,
        'a', 1508,
        'D', 1416,
        'd', 1416,
        'E', 1553,
        'e', 1553,
        'F', 1549,
        'f', 1549,
        'H', 1437,
        'h', 1437,
        'I', 1582,
        'i', 1582,
        'K', 1549,
        'k', 1549,
        'O', 999,
        'o', 999,
        'P', 1601,
        'p', 1601,
        'Q', 1562,
        'q', 1562,
        'R', 1533,
        'r', 1533,
        'S', 769,
        's', 769,
        'T', 1415,
        't', 1415,
        'U', 1498,
        'u', 1498,
        'W', 1434,
        'w', 1434,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1404:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1581);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1405:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1433,
        'a', 1433,
        'I', 1525,
        'i', 1525,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1406:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1556,
        'a', 1556,
        'E', 1404,
        'e', 1404,
        'I', 1528,
        'i', 1528,
        'O', 1514,
        'o', 1514,
        'P', 1610,
        'p', 1610,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1407:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'A', 1439,
        'a', 1439,
        'I', 1526,
        'i', 1526,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1408:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1489);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1409:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1583);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1410:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1506);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1411:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(830);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1412:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1499);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1413:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1503);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1414:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'R', 770,
        'r', 770,
        'S', 1551,
        's', 1551,
        'T', 1542,
        't', 1542,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1415:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'R', 770,
        'r', 770,
        'T', 1542,
        't', 1542,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1416:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'T', 1542,
        't', 1542,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1417:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(772);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1418:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 784,
        'c', 784,
        'I', 1421,
        'i', 1421,
        'L', 1402,
        'l', 1402,
        'M', 1002,
        'm', 1002,
        'O', 1540,
        'o', 1540,
        'S', 772,
        's', 772,
        'U', 1467,
        'u', 1467,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1419:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 762,
        'c', 762,
        'V', 1603,
        'v', 1603,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1420:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(762);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1421:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 1532,
        'c', 1532,
        'E', 1428,
        'e', 1428,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1422:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1491);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1423:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 1478,
        'c', 1478,
        'S', 1554,
        's', 1554,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1424:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1534);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1425:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 1447,
        'c', 1447,
        'I', 1527,
        'i', 1527,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1426:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1447);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1427:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1476);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1428:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1456);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1429:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1605);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1430:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1416,
        'd', 1416,
        'E', 1553,
        'e', 1553,
        'F', 1549,
        'f', 1549,
        'H', 1437,
        'h', 1437,
        'I', 1471,
        'i', 1471,
        'K', 1549,
        'k', 1549,
        'P', 1549,
        'p', 1549,
        'Q', 1562,
        'q', 1562,
        'R', 1549,
        'r', 1549,
        'S', 769,
        's', 769,
        'T', 1414,
        't', 1414,
        'X', 1431,
        'x', 1431,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1431:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1416,
        'd', 1416,
        'E', 1553,
        'e', 1553,
        'F', 1549,
        'f', 1549,
        'H', 1437,
        'h', 1437,
        'K', 1549,
        'k', 1549,
        'P', 1549,
        'p', 1549,
        'Q', 1562,
        'q', 1562,
        'R', 1549,
        'r', 1549,
        'S', 1438,
        's', 1438,
        'T', 1600,
        't', 1600,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1432:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1591);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1433:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(782);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1434:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1536,
        'd', 1536,
        'P', 787,
        'p', 787,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1435:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1417,
        'd', 1417,
        'L', 1609,
        'l', 1609,
        'C', 772,
        'S', 772,
        'c', 772,
        's', 772,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1436:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1417,
        'd', 1417,
        'R', 1450,
        'r', 1450,
        'T', 1585,
        't', 1585,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1437:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1417,
        'd', 1417,
        'T', 1585,
        't', 1585,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1438:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'D', 1417,
        'd', 1417,
        'C', 772,
        'S', 772,
        'c', 772,
        's', 772,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1439:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1563);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1440:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1441:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1462);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1442:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1611);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1443:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1605);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1444:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1584,
        'e', 1584,
        'I', 1513,
        'i', 1513,
        'O', 1565,
        'o', 1565,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1445:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1446:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1002,
        'e', 1002,
        'I', 1522,
        'i', 1522,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1447:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1448:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(827);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1449:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1420);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1450:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1458);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1451:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1564);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1452:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1004);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1453:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'E', 1409,
        'e', 1409,
        'O', 1544,
        'o', 1544,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1454:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1408);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1455:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(819);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1456:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1599);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1457:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1429);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1458:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1596);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1459:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1550);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1460:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1516);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1461:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1462:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1440);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1463:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1523);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1464:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1442);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1465:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1466:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1467:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'F', 1465,
        'f', 1465,
        'R', 1495,
        'r', 1495,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1468:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1466);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1469:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1608);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1470:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1471:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1477);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1472:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(777);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1473:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1474:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1501);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1475:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'H', 821,
        'h', 821,
        'L', 783,
        'l', 783,
        'O', 1517,
        'o', 1517,
        'R', 1401,
        'r', 1401,
        'U', 1565,
        'u', 1565,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1476:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1477:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1575);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1478:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1451);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1479:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'I', 1426,
        'i', 1426,
        'O', 1596,
        'o', 1596,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1480:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1569);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1481:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1410);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1482:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1511);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1483:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1560);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1484:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1573);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1485:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1518);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1486:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1558);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1487:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1494);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1488:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1413);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1489:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1490:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(996);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1491:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1597);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1492:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1447);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1493:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1457);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1494:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1448);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1495:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1496:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1497:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1469);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1498:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'L', 1502,
        'l', 1502,
        'R', 1610,
        'r', 1610,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1499:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1455);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1500:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1461);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1501:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1445);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1502:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1503:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1443);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1504:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'M', 1541,
        'm', 1541,
        'N', 1474,
        'n', 1474,
        'X', 1596,
        'x', 1596,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1505:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(1459);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1506:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1605);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1507:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1419);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1508:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'N', 784,
        'n', 784,
        'S', 1574,
        's', 1574,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1509:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1510:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1432);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1511:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(995);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1512:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(996);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1513:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1458);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1514:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'N', 1473,
        'n', 1473,
        'O', 1538,
        'o', 1538,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1515:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'N', 1480,
        'n', 1480,
        'S', 772,
        's', 772,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1516:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1006);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1517:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1576);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1518:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1578);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1519:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1426);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1520:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1005);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1521:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1441);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1522:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1470);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1523:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1596);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1524:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1570);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1525:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1567);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1526:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1563);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1527:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1607);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1528:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1493);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1529:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'N', 1486,
        'n', 1486,
        'R', 1512,
        'r', 1512,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1530:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1482);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1531:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1472);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1532:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1571);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1533:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'O', 1524,
        'o', 1524,
        'S', 772,
        's', 772,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1534:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1546);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1535:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'P', 787,
        'p', 787,
        'U', 1545,
        'u', 1545,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1536:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1537:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'P', 994,
        'p', 994,
        'S', 771,
        's', 771,
        'T', 1535,
        't', 1535,
        'V', 1604,
        'v', 1604,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1538:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1610);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1539:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1598);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1540:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1424);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1541:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1500);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1542:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(772);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1543:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'R', 1447,
        'r', 1447,
        'V', 1447,
        'v', 1447,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1544:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1490);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1545:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1520);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1546:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1509);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1547:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1559);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1548:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'S', 772,
        's', 772,
        'T', 1002,
        't', 1002,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1549:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(772);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1550:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1551:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(787);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1552:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(996);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1553:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(771);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1554:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1606);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1555:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1488);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1556:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1572);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1557:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1552);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1558:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1481);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1559:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1461);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1560:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1464);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1561:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'T', 1542,
        't', 1542,
        'U', 1405,
        'u', 1405,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1562:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'T', 1542,
        't', 1542,
        'U', 1407,
        'u', 1407,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1563:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1542);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1564:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(784);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1565:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1002);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1566:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'T', 1398,
        't', 1398,
        'V', 1463,
        'v', 1463,
        'W', 1002,
        'w', 1002,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1567:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(781);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1568:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(778);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1569:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(830);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1570:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1597);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1571:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(815);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1572:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1598);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1573:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1427);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1574:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1460);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1575:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1596);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1576:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1485);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1577:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1412);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1578:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1447);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1579:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1468);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1580:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'U', 1510,
        'u', 1510,
        'W', 1591,
        'w', 1591,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1581:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1446);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1582:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1458);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1583:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1452);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1584:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(1572);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1585:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 743,
        ' ', 204,
        '/', 276,
        ':', 760,
        'C', 772,
        'R', 772,
        'c', 772,
        'r', 772,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1586:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(743);
      if (lookahead == ' ') ADVANCE(204);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1587:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 407,
        ' ', 29,
        '.', 318,
        '/', 276,
        ':', 760,
        'B', 1496,
        'b', 1496,
        'C', 772,
        'c', 772,
        'E', 1420,
        'e', 1420,
        'O', 1577,
        'o', 1577,
        'T', 1542,
        't', 1542,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1588:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 405,
        ' ', 27,
        '.', 318,
        '/', 276,
        ':', 760,
        'A', 1497,
        'a', 1497,
        'D', 1417,
        'd', 1417,
        'T', 1585,
        't', 1585,
      );
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1589:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 736,
        ' ', 203,
        '.', 315,
        '/', 276,
        ':', 760,
        'A', 1483,
        'a', 1483,
        'D', 1590,
        'd', 1590,
        'E', 1537,
        'e', 1537,
        'F', 1549,
        'f', 1549,
        'H', 1437,
        'h', 1437,
        'K', 1549,
        'k', 1549,
        'N', 1432,
        'n', 1432,
        'O', 1580,
        'o', 1580,
        'P', 1548,
        'p', 1548,
        'Q', 1562,
        'q', 1562,
        'R', 1549,
        'r', 1549,
        'S', 769,
        's', 769,
        'T', 1415,
        't', 1415,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (('B' <= lookahead && lookahead <= 'Z') ||
          ('b' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1590:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 736,
        ' ', 203,
        '.', 315,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'S', 1592,
        's', 1592,
        'T', 1542,
        't', 1542,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1591:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(736);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '.') ADVANCE(315);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1592);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1592:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(736);
      if (lookahead == ' ') ADVANCE(203);
      if (lookahead == '.') ADVANCE(315);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1593:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 439,
        ' ', 50,
        '.', 318,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'D', 1417,
        'd', 1417,
        'E', 1566,
        'e', 1566,
        'H', 774,
        'h', 774,
        'I', 1504,
        'i', 1504,
        'K', 997,
        'k', 997,
        'L', 829,
        'l', 829,
        'P', 1487,
        'p', 1487,
        'S', 772,
        's', 772,
        'T', 1579,
        't', 1579,
        'W', 1484,
        'w', 1484,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1594:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 356,
        ' ', 15,
        '-', 363,
        '.', 318,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'D', 1416,
        'd', 1416,
        'E', 1553,
        'e', 1553,
        'F', 1549,
        'f', 1549,
        'H', 1436,
        'h', 1436,
        'I', 1505,
        'i', 1505,
        'K', 1549,
        'k', 1549,
        'P', 1549,
        'p', 1549,
        'Q', 1562,
        'q', 1562,
        'R', 812,
        'r', 812,
        'S', 1435,
        's', 1435,
        'T', 1415,
        't', 1415,
        'U', 1529,
        'u', 1529,
        'W', 1479,
        'w', 1479,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1595:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(667);
      if (lookahead == ' ') ADVANCE(166);
      if (lookahead == '-') ADVANCE(672);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1564);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1596:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(699);
      if (lookahead == ' ') ADVANCE(189);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1531);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1597:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(630);
      if (lookahead == ' ') ADVANCE(152);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1598:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(648);
      if (lookahead == ' ') ADVANCE(160);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1599:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(280);
      if (lookahead == ' ') ADVANCE(217);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(757);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1600:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        '/', 276,
        ':', 760,
        'C', 772,
        'c', 772,
        'E', 1521,
        'e', 1521,
        'R', 770,
        'r', 770,
        'T', 1542,
        't', 1542,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1601:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        '/', 276,
        ':', 760,
        'D', 1416,
        'd', 1416,
        'E', 1553,
        'e', 1553,
        'F', 1549,
        'f', 1549,
        'H', 1437,
        'h', 1437,
        'K', 1549,
        'k', 1549,
        'P', 1549,
        'p', 1549,
        'Q', 1562,
        'q', 1562,
        'R', 1549,
        'r', 1549,
        'S', 769,
        's', 769,
        'T', 1415,
        't', 1415,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1602:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        '/', 276,
        ':', 760,
        'D', 1416,
        'd', 1416,
        'E', 1553,
        'e', 1553,
        'F', 1549,
        'f', 1549,
        'H', 1437,
        'h', 1437,
        'K', 1549,
        'k', 1549,
        'P', 1549,
        'p', 1549,
        'Q', 1562,
        'q', 1562,
        'R', 1549,
        'r', 1549,
        'S', 1438,
        's', 1438,
        'T', 1415,
        't', 1415,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1603:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '\t', 358,
        ' ', 17,
        '-', 363,
        '/', 276,
        ':', 760,
        'D', 1449,
        'd', 1449,
        'I', 1555,
        'i', 1555,
      );
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1604:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1547);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1605:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(358);
      if (lookahead == ' ') ADVANCE(17);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1606:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1440);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1607:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(359);
      if (lookahead == ' ') ADVANCE(18);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1608:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(362);
      if (lookahead == ' ') ADVANCE(21);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1609:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1568);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1610:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(671);
      if (lookahead == ' ') ADVANCE(169);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1611:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '\t') ADVANCE(377);
      if (lookahead == ' ') ADVANCE(26);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(760);
      if (('A' <= lookahead && lookahead <= 'Z') ||
          ('a' <= lookahead && lookahead <= 'z')) ADVANCE(1586);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1612:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '(') ADVANCE(1873);
      if (lookahead == ')') ADVANCE(1872);
      if (lookahead == '\t' ||
          (0x0b <= lookahead && lookahead <= '\r') ||
          lookahead == ' ') ADVANCE(245);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1612);
      END_STATE();
    case 1613:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '(') ADVANCE(245);
      if (lookahead == '/') ADVANCE(240);
      if (lookahead == ':') ADVANCE(758);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(241);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1613);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '(' &&
          lookahead != ')' &&
          (lookahead < '.' || ':' < lookahead)) ADVANCE(241);
      END_STATE();
    case 1614:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '(') ADVANCE(1612);
      if (lookahead == ':') ADVANCE(759);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(241);
      if (lookahead == ')' ||
          lookahead == '.') ADVANCE(1873);
      if ((0x0b <= lookahead && lookahead <= '\r')) ADVANCE(241);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1614);
      END_STATE();
    case 1615:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '-', 363,
        '.', 318,
        '/', 276,
        '\t', 369,
        ' ', 369,
        'C', 861,
        'c', 861,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1695,
        'h', 1695,
        'I', 1776,
        'i', 1776,
        'K', 1826,
        'k', 1826,
        'O', 1735,
        'o', 1735,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 851,
        'r', 851,
        'S', 1694,
        's', 1694,
        'T', 1664,
        't', 1664,
        'U', 1802,
        'u', 1802,
        'W', 1745,
        'w', 1745,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1616:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '-', 363,
        '.', 318,
        '/', 276,
        '\t', 369,
        ' ', 369,
        'C', 861,
        'c', 861,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1695,
        'h', 1695,
        'I', 1776,
        'i', 1776,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 851,
        'r', 851,
        'S', 1694,
        's', 1694,
        'T', 1664,
        't', 1664,
        'U', 1802,
        'u', 1802,
        'W', 1745,
        'w', 1745,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1617:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1692);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1618:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(364);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1619:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(367);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1620:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(378);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1621:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '-', 363,
        '/', 276,
        '\t', 368,
        ' ', 368,
        'D', 1727,
        'd', 1727,
        'I', 1833,
        'i', 1833,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1622:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(363);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(368);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1623:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(672);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(673);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1843);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1624:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '-') ADVANCE(722);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1814);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1625:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 387,
        ' ', 387,
        'B', 1766,
        'b', 1766,
        'C', 861,
        'c', 861,
        'E', 1684,
        'e', 1684,
        'O', 1860,
        'o', 1860,
        'T', 1818,
        't', 1818,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1626:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 384,
        ' ', 384,
        'A', 1767,
        'a', 1767,
        'D', 1666,
        'd', 1666,
        'T', 1870,
        't', 1870,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1627:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 434,
        ' ', 434,
        'C', 861,
        'c', 861,
        'D', 1666,
        'd', 1666,
        'E', 1845,
        'e', 1845,
        'H', 864,
        'h', 864,
        'I', 1775,
        'i', 1775,
        'K', 1015,
        'k', 1015,
        'L', 855,
        'l', 855,
        'P', 1755,
        'p', 1755,
        'S', 861,
        's', 861,
        'T', 923,
        't', 923,
        'W', 1752,
        'w', 1752,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1628:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 434,
        ' ', 434,
        'C', 861,
        'c', 861,
        'D', 1666,
        'd', 1666,
        'E', 1845,
        'e', 1845,
        'H', 864,
        'h', 864,
        'I', 1775,
        'i', 1775,
        'K', 1015,
        'k', 1015,
        'L', 855,
        'l', 855,
        'P', 1755,
        'p', 1755,
        'S', 861,
        's', 861,
        'T', 1862,
        't', 1862,
        'W', 1752,
        'w', 1752,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1629:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 434,
        ' ', 434,
        'C', 861,
        'c', 861,
        'D', 1666,
        'd', 1666,
        'E', 1866,
        'e', 1866,
        'H', 864,
        'h', 864,
        'I', 1775,
        'i', 1775,
        'K', 1015,
        'k', 1015,
        'L', 855,
        'l', 855,
        'P', 1755,
        'p', 1755,
        'S', 861,
        's', 861,
        'T', 923,
        't', 923,
        'W', 1752,
        'w', 1752,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1630:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 318,
        '/', 276,
        '\t', 434,
        ' ', 434,
        'C', 861,
        'c', 861,
        'D', 1666,
        'd', 1666,
        'E', 1866,
        'e', 1866,
        'H', 864,
        'h', 864,
        'I', 1775,
        'i', 1775,
        'K', 1015,
        'k', 1015,
        'L', 855,
        'l', 855,
        'P', 1755,
        'p', 1755,
        'S', 861,
        's', 861,
        'T', 1862,
        't', 1862,
        'W', 1752,
        'w', 1752,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1631:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 315,
        '/', 276,
        '\t', 735,
        ' ', 735,
        'A', 1750,
        'a', 1750,
        'D', 1632,
        'd', 1632,
        'E', 1813,
        'e', 1813,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'N', 1691,
        'n', 1691,
        'O', 1863,
        'o', 1863,
        'P', 1825,
        'p', 1825,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1632:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '.', 315,
        '/', 276,
        '\t', 735,
        ' ', 735,
        'C', 861,
        'c', 861,
        'S', 1634,
        's', 1634,
        'T', 1818,
        't', 1818,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1633:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '.') ADVANCE(315);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(735);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1634);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1634:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '.') ADVANCE(315);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(735);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(1613);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1635:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == ':') ADVANCE(757);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(279);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1636:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(707);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1804);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1637:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(650);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1638:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1850);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1639:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(675);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1640:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(642);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1641:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1674,
        'a', 1674,
        'O', 857,
        'o', 857,
        'P', 919,
        'p', 919,
        'R', 1718,
        'r', 1718,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1642:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1761);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1835);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1820);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1643:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1658);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1675);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1644:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1677);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1645:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1779,
        'a', 1779,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'I', 1865,
        'i', 1865,
        'K', 1826,
        'k', 1826,
        'O', 1017,
        'o', 1017,
        'P', 918,
        'p', 918,
        'Q', 1841,
        'q', 1841,
        'R', 1806,
        'r', 1806,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
        'U', 1769,
        'u', 1769,
        'W', 1690,
        'w', 1690,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1646:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1779,
        'a', 1779,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'I', 1865,
        'i', 1865,
        'K', 1826,
        'k', 1826,
        'O', 1017,
        'o', 1017,
        'P', 1687,
        'p', 1687,
        'Q', 1841,
        'q', 1841,
        'R', 1809,
        'r', 1809,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
        'U', 1769,
        'u', 1769,
        'W', 1690,
        'w', 1690,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1647:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1779,
        'a', 1779,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'I', 1865,
        'i', 1865,
        'K', 1826,
        'k', 1826,
        'O', 1018,
        'o', 1018,
        'P', 918,
        'p', 918,
        'Q', 1841,
        'q', 1841,
        'R', 1806,
        'r', 1806,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
        'U', 1769,
        'u', 1769,
        'W', 1690,
        'w', 1690,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1648:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1779,
        'a', 1779,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'I', 1865,
        'i', 1865,
        'K', 1826,
        'k', 1826,
        'O', 1018,
        'o', 1018,
        'P', 1687,
        'p', 1687,
        'Q', 1841,
        'q', 1841,
        'R', 1809,
        'r', 1809,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
        'U', 1769,
        'u', 1769,
        'W', 1690,
        'w', 1690,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1649:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1864);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1650:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1693);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1798);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1651:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1834,
        'a', 1834,
        'E', 1649,
        'e', 1649,
        'I', 1801,
        'i', 1801,
        'O', 1793,
        'o', 1793,
        'P', 1639,
        'p', 1639,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1652:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1750,
        'a', 1750,
        'D', 1665,
        'd', 1665,
        'E', 1813,
        'e', 1813,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'P', 1825,
        'p', 1825,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1653:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1699);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1799);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1654:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1758);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1655:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1777);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1656:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'A', 1681,
        'a', 1681,
        'O', 857,
        'o', 857,
        'P', 1688,
        'p', 1688,
        'R', 1718,
        'r', 1718,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1657:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'A' ||
          lookahead == 'a') ADVANCE(1867);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1658:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(856);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1659:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1770);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1660:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1773);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1661:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'B' ||
          lookahead == 'b') ADVANCE(1774);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1662:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'C', 861,
        'c', 861,
        'E', 1795,
        'e', 1795,
        'R', 859,
        'r', 859,
        'T', 1818,
        't', 1818,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1663:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'C', 861,
        'c', 861,
        'R', 859,
        'r', 859,
        'S', 1828,
        's', 1828,
        'T', 1818,
        't', 1818,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1664:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(861);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(859);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1818);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1665:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(861);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1818);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1666:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1667:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'C', 874,
        'c', 874,
        'I', 1672,
        'i', 1672,
        'L', 1644,
        'l', 1644,
        'M', 1021,
        'm', 1021,
        'O', 1815,
        'o', 1815,
        'S', 861,
        's', 861,
        'U', 1730,
        'u', 1730,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1668:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'C', 874,
        'c', 874,
        'I', 1673,
        'i', 1673,
        'L', 1644,
        'l', 1644,
        'M', 1021,
        'm', 1021,
        'O', 1815,
        'o', 1815,
        'S', 861,
        's', 861,
        'U', 1730,
        'u', 1730,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1669:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'C', 874,
        'c', 874,
        'I', 1673,
        'i', 1673,
        'L', 1644,
        'l', 1644,
        'M', 1021,
        'm', 1021,
        'O', 1816,
        'o', 1816,
        'S', 861,
        's', 861,
        'U', 1730,
        'u', 1730,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1670:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(833);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1621);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1671:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(833);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1672:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1805);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1682);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1673:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1805);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1674:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1759);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1675:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1743);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1831);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1676:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1807);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1677:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1707);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1783);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1678:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1707);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1679:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1741);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1680:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1740);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1681:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1762);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1682:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(1710);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1683:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(834);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1698);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1684:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'c') ADVANCE(834);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1685:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1869);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1686:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'I', 1734,
        'i', 1734,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 858,
        's', 858,
        'T', 1663,
        't', 1663,
        'X', 1689,
        'x', 1689,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1687:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 858,
        's', 858,
        'T', 1664,
        't', 1664,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1688:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 1697,
        's', 1697,
        'T', 1664,
        't', 1664,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1689:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'D', 1665,
        'd', 1665,
        'E', 1832,
        'e', 1832,
        'F', 1826,
        'f', 1826,
        'H', 1696,
        'h', 1696,
        'K', 1826,
        'k', 1826,
        'P', 1826,
        'p', 1826,
        'Q', 1841,
        'q', 1841,
        'R', 1826,
        'r', 1826,
        'S', 1697,
        's', 1697,
        'T', 1662,
        't', 1662,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1690:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1812);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1691:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1633);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1692:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1618);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1693:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(872);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1694:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'D', 1666,
        'd', 1666,
        'L', 1638,
        'l', 1638,
        'C', 861,
        'S', 861,
        'c', 861,
        's', 861,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1695:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1666);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1713);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1696:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1666);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1870);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1697:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1666);
      if (lookahead == 'C' ||
          lookahead == 'S' ||
          lookahead == 'c' ||
          lookahead == 's') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1698:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'D', 1727,
        'd', 1727,
        'I', 1839,
        'i', 1839,
        '\t', 363,
        ' ', 363,
        '-', 363,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1699:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1842);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1700:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1722);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1701:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'D' ||
          lookahead == 'd') ADVANCE(1620);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1702:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1869);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1703:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'E', 1649,
        'e', 1649,
        'I', 1801,
        'i', 1801,
        'O', 1793,
        'o', 1793,
        'P', 1639,
        'p', 1639,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1704:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1868);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1787);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1844);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1705:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1706:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1021);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1796);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1707:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1708:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1636);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1709:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1618);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1710:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1635);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1711:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(839);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1712:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1011);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1713:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1708);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1714:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1843);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1715:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1657);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1821);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1716:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(854);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1717:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1824);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1718:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1654);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1719:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1819);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1720:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1685);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1721:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1701);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1722:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1692);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1723:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1827);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1724:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1782);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1725:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1786);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1726:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1622);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1727:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(1684);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1728:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1729:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1730:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1728);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1765);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1731:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1619);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1732:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'F' ||
          lookahead == 'f') ADVANCE(1729);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1733:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1734:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1742);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1735:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(921);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1736:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1618);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1737:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(867);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1738:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'G' ||
          lookahead == 'g') ADVANCE(1772);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1739:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'H', 849,
        'h', 849,
        'L', 873,
        'l', 873,
        'O', 1792,
        'o', 1792,
        'R', 1643,
        'r', 1643,
        'U', 1844,
        'u', 1844,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1740:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1741:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(920);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1742:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1846);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1743:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1714);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1744:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'H' ||
          lookahead == 'h') ADVANCE(1719);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1745:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1678);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1636);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1746:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1787);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1844);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1747:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1848);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1748:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1655);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1749:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1784);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1750:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1837);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1751:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1785);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1752:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1856);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1753:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1836);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1754:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1788);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1755:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1764);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1756:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1660);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1757:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'I' ||
          lookahead == 'i') ADVANCE(1661);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1758:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1759:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(917);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1760:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1014);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1761:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1707);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1762:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1640);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1763:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1720);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1764:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'K' ||
          lookahead == 'k') ADVANCE(1711);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1765:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1766:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1767:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1731);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1768:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1618);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1769:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1768);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1639);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1770:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1716);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1771:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1709);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1772:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1705);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1773:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1726);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1774:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'L' ||
          lookahead == 'l') ADVANCE(1702);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1775:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(1817);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1738);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(1636);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1776:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'M' ||
          lookahead == 'm') ADVANCE(1723);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1777:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1869);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1778:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1670);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1779:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(874);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1859);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1780:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1781:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1691);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1782:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1636);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1783:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1618);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1784:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1013);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1785:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1014);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1786:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1009);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1787:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1708);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1788:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1789:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1683);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1790:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1747);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1791:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1008);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1792:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1857);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1793:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1736);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1810);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1794:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1678);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1795:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1700);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1796:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1733);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1797:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1847);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1798:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1851);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1799:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1842);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1800:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1854);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1801:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1763);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1802:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'N' ||
          lookahead == 'n') ADVANCE(1753);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1785);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1803:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1749);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1804:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1737);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1805:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1853);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1806:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1797);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1807:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1823);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1808:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1751);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1809:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'O' ||
          lookahead == 'o') ADVANCE(1800);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1810:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1639);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1811:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(877);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1822);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1812:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1813:
      ACCEPT_TOKEN(aux_sym__other_token4);
      ADVANCE_MAP(
        '/', 276,
        'P', 1012,
        'p', 1012,
        'S', 860,
        's', 860,
        'T', 1811,
        't', 1811,
        'V', 1717,
        'v', 1717,
      );
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1814:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1637);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1815:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1676);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1849);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1816:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1676);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1817:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'P' ||
          lookahead == 'p') ADVANCE(1771);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1818:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1819:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(925);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1820:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1707);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1707);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1821:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1760);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1822:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1791);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1823:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1780);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1824:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'R' ||
          lookahead == 'r') ADVANCE(1838);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1825:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(861);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1826:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1827:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1828:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(877);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1829:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(925);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1830:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1014);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1831:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1617);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1832:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(860);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1833:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1756);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1834:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1852);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1835:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1830);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1836:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1748);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1837:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1721);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1838:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1709);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1839:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'S' ||
          lookahead == 's') ADVANCE(1757);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1840:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1818);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1650);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1841:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1818);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1653);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1842:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1818);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1843:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(874);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1844:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1845:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1624);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1724);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1846:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1636);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1847:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(917);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1848:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(856);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1849:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(924);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1850:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(868);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1851:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(871);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1852:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1637);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1853:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(852);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1854:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1640);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1855:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1679);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1856:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1680);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1857:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1754);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1858:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1744);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1859:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'T' ||
          lookahead == 't') ADVANCE(1725);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1860:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1659);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1861:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1707);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1862:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1732);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1863:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'U' ||
          lookahead == 'u') ADVANCE(1781);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1633);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1864:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1706);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1865:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1708);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1866:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1724);
      if (lookahead == 'W' ||
          lookahead == 'w') ADVANCE(1021);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1867:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'V' ||
          lookahead == 'v') ADVANCE(1712);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1868:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'X' ||
          lookahead == 'x') ADVANCE(1852);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1869:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == '\t' ||
          lookahead == ' ' ||
          lookahead == '-') ADVANCE(363);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1870:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (lookahead == 'C' ||
          lookahead == 'R' ||
          lookahead == 'c' ||
          lookahead == 'r') ADVANCE(861);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1871:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == '/') ADVANCE(276);
      if (set_contains(aux_sym__other_token4_character_set_1, 453, lookahead)) ADVANCE(1871);
      END_STATE();
    case 1872:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead == ':') ADVANCE(759);
      if (lookahead == '\t' ||
          lookahead == ' ') ADVANCE(277);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead)) ADVANCE(1873);
      END_STATE();
    case 1873:
      ACCEPT_TOKEN(aux_sym__other_token4);
      if (lookahead != 0 &&
          (lookahead < '\t' || '\r' < lookahead) &&
          lookahead != ' ') ADVANCE(1873);
      END_STATE();
    case 1874:
      ACCEPT_TOKEN(aux_sym__other_token5);
      if (lookahead == '/') ADVANCE(755);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1877);
      END_STATE();
    case 1875:
      ACCEPT_TOKEN(aux_sym__other_token5);
      ADVANCE_MAP(
        'B', 338,
        'b', 338,
        'C', 933,
        'c', 933,
        'D', 928,
        'd', 928,
        'E', 516,
        'e', 516,
        'F', 340,
        'f', 340,
        'I', 568,
        'i', 568,
        'N', 519,
        'n', 519,
        'P', 383,
        'p', 383,
        'S', 380,
        's', 380,
        'T', 505,
        't', 505,
        'V', 263,
        'v', 263,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(330);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1877);
      END_STATE();
    case 1876:
      ACCEPT_TOKEN(aux_sym__other_token5);
      ADVANCE_MAP(
        'B', 355,
        'b', 355,
        'C', 552,
        'c', 552,
        'D', 381,
        'd', 381,
        'E', 537,
        'e', 537,
        'F', 350,
        'f', 350,
        'I', 578,
        'i', 578,
        'N', 531,
        'n', 531,
        'P', 411,
        'p', 411,
        'S', 410,
        's', 410,
        'T', 515,
        't', 515,
        'V', 264,
        'v', 264,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(331);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1877);
      END_STATE();
    case 1877:
      ACCEPT_TOKEN(aux_sym__other_token5);
      if ((!eof && set_contains(aux_sym__other_token5_character_set_1, 458, lookahead))) ADVANCE(1877);
      END_STATE();
    default:
      return false;
  }
}

static const TSLexMode ts_lex_modes[STATE_COUNT] = {
  [0] = {.lex_state = 0},
  [1] = {.lex_state = 747},
  [2] = {.lex_state = 747},
  [3] = {.lex_state = 747},
  [4] = {.lex_state = 748},
  [5] = {.lex_state = 748},
  [6] = {.lex_state = 748},
  [7] = {.lex_state = 748},
  [8] = {.lex_state = 748},
  [9] = {.lex_state = 749},
  [10] = {.lex_state = 745},
  [11] = {.lex_state = 745},
  [12] = {.lex_state = 747},
  [13] = {.lex_state = 745},
  [14] = {.lex_state = 746},
  [15] = {.lex_state = 748},
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
