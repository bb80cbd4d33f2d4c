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
#define STATE_COUNT 163
#define LARGE_STATE_COUNT 8
#define SYMBOL_COUNT 56
#define ALIAS_COUNT 1
#define TOKEN_COUNT 30
#define EXTERNAL_TOKEN_COUNT 0
#define FIELD_COUNT 7
#define MAX_ALIAS_SEQUENCE_LENGTH 6
#define PRODUCTION_ID_COUNT 7

enum ts_symbol_identifiers {
  sym_word = 1,
  anon_sym_LF = 2,
  anon_sym_CR_LF = 3,
  anon_sym_CR = 4,
  anon_sym_SEMI = 5,
  anon_sym_let = 6,
  anon_sym_EQ = 7,
  anon_sym_LBRACE = 8,
  anon_sym_RBRACE = 9,
  anon_sym_PLUS = 10,
  anon_sym_DASH = 11,
  anon_sym_SLASH = 12,
  anon_sym_COLON = 13,
  anon_sym_PLUS_SLASH_DASH = 14,
  anon_sym_u00b1 = 15,
  sym_to = 16,
  anon_sym_x = 17,
  anon_sym_u00d7 = 18,
  anon_sym_LPAREN = 19,
  anon_sym_RPAREN = 20,
  anon_sym_STAR = 21,
  anon_sym_DQUOTE = 22,
  anon_sym_DQUOTE2 = 23,
  sym__text_content = 24,
  sym_escape = 25,
  sym_date = 26,
  sym_number = 27,
  sym_unit = 28,
  sym_comment = 29,
  sym_source_file = 30,
  sym__statement = 31,
  sym__separator = 32,
  sym_let = 33,
  sym_entry = 34,
  sym_block = 35,
  sym__value = 36,
  sym__amount = 37,
  sym_quantity = 38,
  sym_signed = 39,
  sym_pair = 40,
  sym_ratio = 41,
  sym_plus_minus = 42,
  sym_times = 43,
  sym_parenthesis = 44,
  sym__expression = 45,
  sym_binary = 46,
  sym_negation = 47,
  sym__operand = 48,
  sym_text = 49,
  aux_sym_source_file_repeat1 = 50,
  aux_sym_source_file_repeat2 = 51,
  aux_sym_entry_repeat1 = 52,
  aux_sym_ratio_repeat1 = 53,
  aux_sym__operand_repeat1 = 54,
  aux_sym_text_repeat1 = 55,
  alias_sym_name = 56,
};

static const char * const ts_symbol_names[] = {
  [ts_builtin_sym_end] = "end",
  [sym_word] = "word",
  [anon_sym_LF] = "\n",
  [anon_sym_CR_LF] = "\r\n",
  [anon_sym_CR] = "\r",
  [anon_sym_SEMI] = ";",
  [anon_sym_let] = "let",
  [anon_sym_EQ] = "=",
  [anon_sym_LBRACE] = "{",
  [anon_sym_RBRACE] = "}",
  [anon_sym_PLUS] = "+",
  [anon_sym_DASH] = "-",
  [anon_sym_SLASH] = "/",
  [anon_sym_COLON] = ":",
  [anon_sym_PLUS_SLASH_DASH] = "+/-",
  [anon_sym_u00b1] = "\u00b1",
  [sym_to] = "to",
  [anon_sym_x] = "x",
  [anon_sym_u00d7] = "\u00d7",
  [anon_sym_LPAREN] = "(",
  [anon_sym_RPAREN] = ")",
  [anon_sym_STAR] = "*",
  [anon_sym_DQUOTE] = "\"",
  [anon_sym_DQUOTE2] = "\"",
  [sym__text_content] = "_text_content",
  [sym_escape] = "escape",
  [sym_date] = "date",
  [sym_number] = "number",
  [sym_unit] = "unit",
  [sym_comment] = "comment",
  [sym_source_file] = "source_file",
  [sym__statement] = "_statement",
  [sym__separator] = "_separator",
  [sym_let] = "let",
  [sym_entry] = "entry",
  [sym_block] = "block",
  [sym__value] = "_value",
  [sym__amount] = "_amount",
  [sym_quantity] = "quantity",
  [sym_signed] = "signed",
  [sym_pair] = "pair",
  [sym_ratio] = "ratio",
  [sym_plus_minus] = "plus_minus",
  [sym_times] = "times",
  [sym_parenthesis] = "parenthesis",
  [sym__expression] = "_expression",
  [sym_binary] = "binary",
  [sym_negation] = "negation",
  [sym__operand] = "_operand",
  [sym_text] = "text",
  [aux_sym_source_file_repeat1] = "source_file_repeat1",
  [aux_sym_source_file_repeat2] = "source_file_repeat2",
  [aux_sym_entry_repeat1] = "entry_repeat1",
  [aux_sym_ratio_repeat1] = "ratio_repeat1",
  [aux_sym__operand_repeat1] = "_operand_repeat1",
  [aux_sym_text_repeat1] = "text_repeat1",
  [alias_sym_name] = "name",
};

static const TSSymbol ts_symbol_map[] = {
  [ts_builtin_sym_end] = ts_builtin_sym_end,
  [sym_word] = sym_word,
  [anon_sym_LF] = anon_sym_LF,
  [anon_sym_CR_LF] = anon_sym_CR_LF,
  [anon_sym_CR] = anon_sym_CR,
  [anon_sym_SEMI] = anon_sym_SEMI,
  [anon_sym_let] = anon_sym_let,
  [anon_sym_EQ] = anon_sym_EQ,
  [anon_sym_LBRACE] = anon_sym_LBRACE,
  [anon_sym_RBRACE] = anon_sym_RBRACE,
  [anon_sym_PLUS] = anon_sym_PLUS,
  [anon_sym_DASH] = anon_sym_DASH,
  [anon_sym_SLASH] = anon_sym_SLASH,
  [anon_sym_COLON] = anon_sym_COLON,
  [anon_sym_PLUS_SLASH_DASH] = anon_sym_PLUS_SLASH_DASH,
  [anon_sym_u00b1] = anon_sym_u00b1,
  [sym_to] = sym_to,
  [anon_sym_x] = anon_sym_x,
  [anon_sym_u00d7] = anon_sym_u00d7,
  [anon_sym_LPAREN] = anon_sym_LPAREN,
  [anon_sym_RPAREN] = anon_sym_RPAREN,
  [anon_sym_STAR] = anon_sym_STAR,
  [anon_sym_DQUOTE] = anon_sym_DQUOTE,
  [anon_sym_DQUOTE2] = anon_sym_DQUOTE,
  [sym__text_content] = sym__text_content,
  [sym_escape] = sym_escape,
  [sym_date] = sym_date,
  [sym_number] = sym_number,
  [sym_unit] = sym_unit,
  [sym_comment] = sym_comment,
  [sym_source_file] = sym_source_file,
  [sym__statement] = sym__statement,
  [sym__separator] = sym__separator,
  [sym_let] = sym_let,
  [sym_entry] = sym_entry,
  [sym_block] = sym_block,
  [sym__value] = sym__value,
  [sym__amount] = sym__amount,
  [sym_quantity] = sym_quantity,
  [sym_signed] = sym_signed,
  [sym_pair] = sym_pair,
  [sym_ratio] = sym_ratio,
  [sym_plus_minus] = sym_plus_minus,
  [sym_times] = sym_times,
  [sym_parenthesis] = sym_parenthesis,
  [sym__expression] = sym__expression,
  [sym_binary] = sym_binary,
  [sym_negation] = sym_negation,
  [sym__operand] = sym__operand,
  [sym_text] = sym_text,
  [aux_sym_source_file_repeat1] = aux_sym_source_file_repeat1,
  [aux_sym_source_file_repeat2] = aux_sym_source_file_repeat2,
  [aux_sym_entry_repeat1] = aux_sym_entry_repeat1,
  [aux_sym_ratio_repeat1] = aux_sym_ratio_repeat1,
  [aux_sym__operand_repeat1] = aux_sym__operand_repeat1,
  [aux_sym_text_repeat1] = aux_sym_text_repeat1,
  [alias_sym_name] = alias_sym_name,
};

static const TSSymbolMetadata ts_symbol_metadata[] = {
  [ts_builtin_sym_end] = {
    .visible = false,
    .named = true,
  },
  [sym_word] = {
    .visible = true,
    .named = true,
  },
  [anon_sym_LF] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_CR_LF] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_CR] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_SEMI] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_let] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_EQ] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_LBRACE] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_RBRACE] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_PLUS] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_DASH] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_SLASH] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_COLON] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_PLUS_SLASH_DASH] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00b1] = {
    .visible = true,
    .named = false,
  },
  [sym_to] = {
    .visible = true,
    .named = true,
  },
  [anon_sym_x] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_u00d7] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_LPAREN] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_RPAREN] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_STAR] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_DQUOTE] = {
    .visible = true,
    .named = false,
  },
  [anon_sym_DQUOTE2] = {
    .visible = true,
    .named = false,
  },
  [sym__text_content] = {
    .visible = false,
    .named = true,
  },
  [sym_escape] = {
    .visible = true,
    .named = true,
  },
  [sym_date] = {
    .visible = true,
    .named = true,
  },
  [sym_number] = {
    .visible = true,
    .named = true,
  },
  [sym_unit] = {
    .visible = true,
    .named = true,
  },
  [sym_comment] = {
    .visible = true,
    .named = true,
  },
  [sym_source_file] = {
    .visible = true,
    .named = true,
  },
  [sym__statement] = {
    .visible = false,
    .named = true,
  },
  [sym__separator] = {
    .visible = false,
    .named = true,
  },
  [sym_let] = {
    .visible = true,
    .named = true,
  },
  [sym_entry] = {
    .visible = true,
    .named = true,
  },
  [sym_block] = {
    .visible = true,
    .named = true,
  },
  [sym__value] = {
    .visible = false,
    .named = true,
  },
  [sym__amount] = {
    .visible = false,
    .named = true,
  },
  [sym_quantity] = {
    .visible = true,
    .named = true,
  },
  [sym_signed] = {
    .visible = true,
    .named = true,
  },
  [sym_pair] = {
    .visible = true,
    .named = true,
  },
  [sym_ratio] = {
    .visible = true,
    .named = true,
  },
  [sym_plus_minus] = {
    .visible = true,
    .named = true,
  },
  [sym_times] = {
    .visible = true,
    .named = true,
  },
  [sym_parenthesis] = {
    .visible = true,
    .named = true,
  },
  [sym__expression] = {
    .visible = false,
    .named = true,
  },
  [sym_binary] = {
    .visible = true,
    .named = true,
  },
  [sym_negation] = {
    .visible = true,
    .named = true,
  },
  [sym__operand] = {
    .visible = false,
    .named = true,
  },
  [sym_text] = {
    .visible = true,
    .named = true,
  },
  [aux_sym_source_file_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_source_file_repeat2] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_entry_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_ratio_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym__operand_repeat1] = {
    .visible = false,
    .named = false,
  },
  [aux_sym_text_repeat1] = {
    .visible = false,
    .named = false,
  },
  [alias_sym_name] = {
    .visible = true,
    .named = true,
  },
};

enum ts_field_identifiers {
  field_block = 1,
  field_head = 2,
  field_left = 3,
  field_name = 4,
  field_operator = 5,
  field_right = 6,
  field_value = 7,
};

static const char * const ts_field_names[] = {
  [0] = NULL,
  [field_block] = "block",
  [field_head] = "head",
  [field_left] = "left",
  [field_name] = "name",
  [field_operator] = "operator",
  [field_right] = "right",
  [field_value] = "value",
};

static const TSFieldMapSlice ts_field_map_slices[PRODUCTION_ID_COUNT] = {
  [1] = {.index = 0, .length = 1},
  [3] = {.index = 1, .length = 2},
  [4] = {.index = 3, .length = 2},
  [5] = {.index = 5, .length = 2},
  [6] = {.index = 7, .length = 3},
};

static const TSFieldMapEntry ts_field_map_entries[] = {
  [0] =
    {field_head, 0},
  [1] =
    {field_block, 1},
    {field_head, 0},
  [3] =
    {field_block, 2},
    {field_head, 0},
  [5] =
    {field_name, 1},
    {field_value, 3},
  [7] =
    {field_left, 0},
    {field_operator, 1},
    {field_right, 2},
};

static const TSSymbol ts_alias_sequences[PRODUCTION_ID_COUNT][MAX_ALIAS_SEQUENCE_LENGTH] = {
  [0] = {0},
  [2] = {
    [0] = alias_sym_name,
  },
};

static const uint16_t ts_non_terminal_alias_map[] = {
  0,
};

static const TSStateId ts_primary_state_ids[STATE_COUNT] = {
  [0] = 0,
  [1] = 1,
  [2] = 2,
  [3] = 3,
  [4] = 3,
  [5] = 2,
  [6] = 6,
  [7] = 6,
  [8] = 8,
  [9] = 8,
  [10] = 10,
  [11] = 10,
  [12] = 12,
  [13] = 13,
  [14] = 14,
  [15] = 12,
  [16] = 13,
  [17] = 14,
  [18] = 18,
  [19] = 19,
  [20] = 20,
  [21] = 21,
  [22] = 22,
  [23] = 20,
  [24] = 22,
  [25] = 19,
  [26] = 21,
  [27] = 18,
  [28] = 28,
  [29] = 29,
  [30] = 30,
  [31] = 31,
  [32] = 32,
  [33] = 33,
  [34] = 34,
  [35] = 34,
  [36] = 36,
  [37] = 36,
  [38] = 38,
  [39] = 38,
  [40] = 40,
  [41] = 28,
  [42] = 40,
  [43] = 30,
  [44] = 31,
  [45] = 32,
  [46] = 33,
  [47] = 29,
  [48] = 48,
  [49] = 49,
  [50] = 49,
  [51] = 48,
  [52] = 52,
  [53] = 53,
  [54] = 54,
  [55] = 53,
  [56] = 54,
  [57] = 57,
  [58] = 58,
  [59] = 59,
  [60] = 60,
  [61] = 60,
  [62] = 59,
  [63] = 59,
  [64] = 64,
  [65] = 64,
  [66] = 64,
  [67] = 57,
  [68] = 58,
  [69] = 58,
  [70] = 58,
  [71] = 58,
  [72] = 72,
  [73] = 18,
  [74] = 29,
  [75] = 18,
  [76] = 72,
  [77] = 29,
  [78] = 78,
  [79] = 79,
  [80] = 80,
  [81] = 81,
  [82] = 82,
  [83] = 78,
  [84] = 84,
  [85] = 81,
  [86] = 84,
  [87] = 80,
  [88] = 79,
  [89] = 89,
  [90] = 89,
  [91] = 82,
  [92] = 53,
  [93] = 54,
  [94] = 94,
  [95] = 95,
  [96] = 96,
  [97] = 97,
  [98] = 98,
  [99] = 99,
  [100] = 60,
  [101] = 101,
  [102] = 102,
  [103] = 103,
  [104] = 104,
  [105] = 105,
  [106] = 106,
  [107] = 96,
  [108] = 94,
  [109] = 97,
  [110] = 98,
  [111] = 106,
  [112] = 99,
  [113] = 98,
  [114] = 104,
  [115] = 29,
  [116] = 116,
  [117] = 18,
  [118] = 116,
  [119] = 119,
  [120] = 80,
  [121] = 121,
  [122] = 122,
  [123] = 123,
  [124] = 124,
  [125] = 125,
  [126] = 78,
  [127] = 119,
  [128] = 128,
  [129] = 84,
  [130] = 121,
  [131] = 14,
  [132] = 124,
  [133] = 125,
  [134] = 121,
  [135] = 121,
  [136] = 121,
  [137] = 122,
  [138] = 82,
  [139] = 123,
  [140] = 128,
  [141] = 141,
  [142] = 141,
  [143] = 143,
  [144] = 144,
  [145] = 144,
  [146] = 146,
  [147] = 147,
  [148] = 147,
  [149] = 146,
  [150] = 150,
  [151] = 151,
  [152] = 152,
  [153] = 153,
  [154] = 154,
  [155] = 155,
  [156] = 152,
  [157] = 153,
  [158] = 150,
  [159] = 151,
  [160] = 160,
  [161] = 154,
  [162] = 160,
};

static TSCharacterRange extras_character_set_3[] = {
  {'\t', '\t'}, {' ', ' '}, {0xa0, 0xa0}, {0x1680, 0x1680}, {0x2000, 0x200a}, {0x202f, 0x202f}, {0x205f, 0x205f}, {0x3000, 0x3000},
  {0xfeff, 0xfeff},
};

static TSCharacterRange extras_character_set_4[] = {
  {'\t', '\n'}, {'\r', '\r'}, {' ', ' '}, {0xa0, 0xa0}, {0x1680, 0x1680}, {0x2000, 0x200a}, {0x202f, 0x202f}, {0x205f, 0x205f},
  {0x3000, 0x3000}, {0xfeff, 0xfeff},
};

static TSCharacterRange sym_word_character_set_1[] = {
  {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb5, 0xb5}, {0xba, 0xba}, {0xc0, 0xd6}, {0xd8, 0xf6},
  {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee}, {0x370, 0x374}, {0x376, 0x377}, {0x37a, 0x37d},
  {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1}, {0x3a3, 0x3f5}, {0x3f7, 0x481}, {0x48a, 0x52f},
  {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2}, {0x620, 0x64a}, {0x66e, 0x66f}, {0x671, 0x6d3},
  {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6ef}, {0x6fa, 0x6fc}, {0x6ff, 0x6ff}, {0x710, 0x710}, {0x712, 0x72f}, {0x74d, 0x7a5},
  {0x7b1, 0x7b1}, {0x7ca, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815}, {0x81a, 0x81a}, {0x824, 0x824}, {0x828, 0x828},
  {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9}, {0x904, 0x939}, {0x93d, 0x93d}, {0x950, 0x950},
  {0x958, 0x961}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990}, {0x993, 0x9a8}, {0x9aa, 0x9b0}, {0x9b2, 0x9b2}, {0x9b6, 0x9b9},
  {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1}, {0x9f0, 0x9f1}, {0x9fc, 0x9fc}, {0xa05, 0xa0a}, {0xa0f, 0xa10},
  {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33}, {0xa35, 0xa36}, {0xa38, 0xa39}, {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa72, 0xa74},
  {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8}, {0xaaa, 0xab0}, {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0},
  {0xae0, 0xae1}, {0xaf9, 0xaf9}, {0xb05, 0xb0c}, {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39},
  {0xb3d, 0xb3d}, {0xb5c, 0xb5d}, {0xb5f, 0xb61}, {0xb71, 0xb71}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95},
  {0xb99, 0xb9a}, {0xb9c, 0xb9c}, {0xb9e, 0xb9f}, {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xc05, 0xc0c},
  {0xc0e, 0xc10}, {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61}, {0xc80, 0xc80},
  {0xc85, 0xc8c}, {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbd, 0xcbd}, {0xcdd, 0xcde}, {0xce0, 0xce1},
  {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a}, {0xd3d, 0xd3d}, {0xd4e, 0xd4e}, {0xd54, 0xd56}, {0xd5f, 0xd61},
  {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd}, {0xdc0, 0xdc6}, {0xe01, 0xe30}, {0xe32, 0xe33},
  {0xe40, 0xe46}, {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a}, {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3},
  {0xebd, 0xebd}, {0xec0, 0xec4}, {0xec6, 0xec6}, {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf40, 0xf47}, {0xf49, 0xf6c}, {0xf88, 0xf8c},
  {0x1000, 0x102a}, {0x103f, 0x103f}, {0x1050, 0x1055}, {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070}, {0x1075, 0x1081},
  {0x108e, 0x108e}, {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248}, {0x124a, 0x124d}, {0x1250, 0x1256},
  {0x1258, 0x1258}, {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5}, {0x12b8, 0x12be}, {0x12c0, 0x12c0},
  {0x12c2, 0x12c5}, {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd},
  {0x1401, 0x166c}, {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16f1, 0x16f8}, {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751},
  {0x1760, 0x176c}, {0x176e, 0x1770}, {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc}, {0x1820, 0x1878}, {0x1880, 0x1884}, {0x1887, 0x18a8},
  {0x18aa, 0x18aa}, {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1950, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9}, {0x1a00, 0x1a16},
  {0x1a20, 0x1a54}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33}, {0x1b45, 0x1b4c}, {0x1b83, 0x1ba0}, {0x1bae, 0x1baf}, {0x1bba, 0x1be5}, {0x1c00, 0x1c23},
  {0x1c4d, 0x1c4f}, {0x1c5a, 0x1c7d}, {0x1c80, 0x1c88}, {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf}, {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3}, {0x1cf5, 0x1cf6},
  {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15}, {0x1f18, 0x1f1d}, {0x1f20, 0x1f45}, {0x1f48, 0x1f4d}, {0x1f50, 0x1f57}, {0x1f59, 0x1f59},
  {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc},
  {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc}, {0x2071, 0x2071}, {0x207f, 0x207f}, {0x2090, 0x209c},
  {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115}, {0x2119, 0x211d}, {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128},
  {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149}, {0x214e, 0x214e}, {0x2183, 0x2184}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee},
  {0x2cf2, 0x2cf3}, {0x2d00, 0x2d25}, {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6},
  {0x2da8, 0x2dae}, {0x2db0, 0x2db6}, {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f},
  {0x3005, 0x3006}, {0x3031, 0x3035}, {0x303b, 0x303c}, {0x3041, 0x3096}, {0x309d, 0x309f}, {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f},
  {0x3131, 0x318e}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3400, 0x4dbf}, {0x4e00, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa61f},
  {0xa62a, 0xa62b}, {0xa640, 0xa66e}, {0xa67f, 0xa69d}, {0xa6a0, 0xa6e5}, {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1},
  {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801}, {0xa803, 0xa805}, {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa840, 0xa873}, {0xa882, 0xa8b3},
  {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb}, {0xa8fd, 0xa8fe}, {0xa90a, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9cf},
  {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9ef}, {0xa9fa, 0xa9fe}, {0xaa00, 0xaa28}, {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a},
  {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1}, {0xaab5, 0xaab6}, {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea},
  {0xaaf2, 0xaaf4}, {0xab01, 0xab06}, {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69},
  {0xab70, 0xabe2}, {0xac00, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17},
  {0xfb1d, 0xfb1d}, {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1},
  {0xfbd3, 0xfd3d}, {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff21, 0xff3a}, {0xff41, 0xff5a},
  {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b}, {0x1000d, 0x10026}, {0x10028, 0x1003a},
  {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10280, 0x1029c}, {0x102a0, 0x102d0}, {0x10300, 0x1031f}, {0x1032d, 0x10340},
  {0x10342, 0x10349}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x10400, 0x1049d}, {0x104b0, 0x104d3}, {0x104d8, 0x104fb},
  {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595}, {0x10597, 0x105a1}, {0x105a3, 0x105b1},
  {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785}, {0x10787, 0x107b0}, {0x107b2, 0x107ba},
  {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855}, {0x10860, 0x10876}, {0x10880, 0x1089e},
  {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x10900, 0x10915}, {0x10920, 0x1092b},
};

static TSCharacterRange sym_word_character_set_2[] = {
  {'-', '-'}, {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb2, 0xb3}, {0xb5, 0xb5},
  {0xb9, 0xba}, {0xbc, 0xbe}, {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec},
  {0x2ee, 0x2ee}, {0x300, 0x374}, {0x376, 0x377}, {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c},
  {0x38e, 0x3a1}, {0x3a3, 0x3f5}, {0x3f7, 0x481}, {0x483, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x591, 0x5bd},
  {0x5bf, 0x5bf}, {0x5c1, 0x5c2}, {0x5c4, 0x5c5}, {0x5c7, 0x5c7}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2}, {0x610, 0x61a}, {0x620, 0x669},
  {0x66e, 0x6d3}, {0x6d5, 0x6dc}, {0x6df, 0x6e8}, {0x6ea, 0x6fc}, {0x6ff, 0x6ff}, {0x710, 0x74a}, {0x74d, 0x7b1}, {0x7c0, 0x7f5},
  {0x7fa, 0x7fa}, {0x7fd, 0x7fd}, {0x800, 0x82d}, {0x840, 0x85b}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x898, 0x8e1},
  {0x8e3, 0x963}, {0x966, 0x96f}, {0x971, 0x983}, {0x985, 0x98c}, {0x98f, 0x990}, {0x993, 0x9a8}, {0x9aa, 0x9b0}, {0x9b2, 0x9b2},
  {0x9b6, 0x9b9}, {0x9bc, 0x9c4}, {0x9c7, 0x9c8}, {0x9cb, 0x9ce}, {0x9d7, 0x9d7}, {0x9dc, 0x9dd}, {0x9df, 0x9e3}, {0x9e6, 0x9f1},
  {0x9f4, 0x9f9}, {0x9fc, 0x9fc}, {0x9fe, 0x9fe}, {0xa01, 0xa03}, {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30},
  {0xa32, 0xa33}, {0xa35, 0xa36}, {0xa38, 0xa39}, {0xa3c, 0xa3c}, {0xa3e, 0xa42}, {0xa47, 0xa48}, {0xa4b, 0xa4d}, {0xa51, 0xa51},
  {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa66, 0xa75}, {0xa81, 0xa83}, {0xa85, 0xa8d}, {0xa8f, 0xa91}, {0xa93, 0xaa8}, {0xaaa, 0xab0},
  {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabc, 0xac5}, {0xac7, 0xac9}, {0xacb, 0xacd}, {0xad0, 0xad0}, {0xae0, 0xae3}, {0xae6, 0xaef},
  {0xaf9, 0xaff}, {0xb01, 0xb03}, {0xb05, 0xb0c}, {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39},
  {0xb3c, 0xb44}, {0xb47, 0xb48}, {0xb4b, 0xb4d}, {0xb55, 0xb57}, {0xb5c, 0xb5d}, {0xb5f, 0xb63}, {0xb66, 0xb6f}, {0xb71, 0xb77},
  {0xb82, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95}, {0xb99, 0xb9a}, {0xb9c, 0xb9c}, {0xb9e, 0xb9f}, {0xba3, 0xba4},
  {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbbe, 0xbc2}, {0xbc6, 0xbc8}, {0xbca, 0xbcd}, {0xbd0, 0xbd0}, {0xbd7, 0xbd7}, {0xbe6, 0xbf2},
  {0xc00, 0xc0c}, {0xc0e, 0xc10}, {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3c, 0xc44}, {0xc46, 0xc48}, {0xc4a, 0xc4d}, {0xc55, 0xc56},
  {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc63}, {0xc66, 0xc6f}, {0xc78, 0xc7e}, {0xc80, 0xc83}, {0xc85, 0xc8c}, {0xc8e, 0xc90},
  {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9}, {0xcbc, 0xcc4}, {0xcc6, 0xcc8}, {0xcca, 0xccd}, {0xcd5, 0xcd6}, {0xcdd, 0xcde},
  {0xce0, 0xce3}, {0xce6, 0xcef}, {0xcf1, 0xcf2}, {0xd00, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd44}, {0xd46, 0xd48}, {0xd4a, 0xd4e},
  {0xd54, 0xd63}, {0xd66, 0xd78}, {0xd7a, 0xd7f}, {0xd81, 0xd83}, {0xd85, 0xd96}, {0xd9a, 0xdb1}, {0xdb3, 0xdbb}, {0xdbd, 0xdbd},
  {0xdc0, 0xdc6}, {0xdca, 0xdca}, {0xdcf, 0xdd4}, {0xdd6, 0xdd6}, {0xdd8, 0xddf}, {0xde6, 0xdef}, {0xdf2, 0xdf3}, {0xe01, 0xe3a},
  {0xe40, 0xe4e}, {0xe50, 0xe59}, {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a}, {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xebd},
  {0xec0, 0xec4}, {0xec6, 0xec6}, {0xec8, 0xecd}, {0xed0, 0xed9}, {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf18, 0xf19}, {0xf20, 0xf33},
  {0xf35, 0xf35}, {0xf37, 0xf37}, {0xf39, 0xf39}, {0xf3e, 0xf47}, {0xf49, 0xf6c}, {0xf71, 0xf84}, {0xf86, 0xf97}, {0xf99, 0xfbc},
  {0xfc6, 0xfc6}, {0x1000, 0x1049}, {0x1050, 0x109d}, {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248},
  {0x124a, 0x124d}, {0x1250, 0x1256}, {0x1258, 0x1258}, {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5},
  {0x12b8, 0x12be}, {0x12c0, 0x12c0}, {0x12c2, 0x12c5}, {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x135d, 0x135f},
  {0x1369, 0x137c}, {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd}, {0x1401, 0x166c}, {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea},
  {0x16ee, 0x16f8}, {0x1700, 0x1715}, {0x171f, 0x1734}, {0x1740, 0x1753}, {0x1760, 0x176c}, {0x176e, 0x1770}, {0x1772, 0x1773}, {0x1780, 0x17d3},
  {0x17d7, 0x17d7}, {0x17dc, 0x17dd}, {0x17e0, 0x17e9}, {0x17f0, 0x17f9}, {0x180b, 0x180d}, {0x180f, 0x1819}, {0x1820, 0x1878}, {0x1880, 0x18aa},
  {0x18b0, 0x18f5}, {0x1900, 0x191e}, {0x1920, 0x192b}, {0x1930, 0x193b}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9},
  {0x19d0, 0x19da}, {0x1a00, 0x1a1b}, {0x1a20, 0x1a5e}, {0x1a60, 0x1a7c}, {0x1a7f, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1ab0, 0x1ace},
  {0x1b00, 0x1b4c}, {0x1b50, 0x1b59}, {0x1b6b, 0x1b73}, {0x1b80, 0x1bf3}, {0x1c00, 0x1c37}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88},
  {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf}, {0x1cd0, 0x1cd2}, {0x1cd4, 0x1cfa}, {0x1d00, 0x1f15}, {0x1f18, 0x1f1d}, {0x1f20, 0x1f45}, {0x1f48, 0x1f4d},
  {0x1f50, 0x1f57}, {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe},
  {0x1fc2, 0x1fc4}, {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc}, {0x2070, 0x2071},
  {0x2074, 0x2079}, {0x207f, 0x2089}, {0x2090, 0x209c}, {0x20d0, 0x20f0}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115},
  {0x2119, 0x211d}, {0x2124, 0x2124}, {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149},
  {0x214e, 0x214e}, {0x2150, 0x2189}, {0x2460, 0x249b}, {0x24ea, 0x24ff}, {0x2776, 0x2793}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cf3}, {0x2cfd, 0x2cfd},
  {0x2d00, 0x2d25}, {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d7f, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae},
  {0x2db0, 0x2db6}, {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2de0, 0x2dff}, {0x2e2f, 0x2e2f},
  {0x3005, 0x3007}, {0x3021, 0x302f}, {0x3031, 0x3035}, {0x3038, 0x303c}, {0x3041, 0x3096}, {0x3099, 0x309a}, {0x309d, 0x309f}, {0x30a1, 0x30fa},
  {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e}, {0x3192, 0x3195}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3220, 0x3229}, {0x3248, 0x324f},
  {0x3251, 0x325f}, {0x3280, 0x3289}, {0x32b1, 0x32bf}, {0x3400, 0x4dbf}, {0x4e00, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b},
  {0xa640, 0xa672}, {0xa674, 0xa67d}, {0xa67f, 0xa6f1}, {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3},
  {0xa7d5, 0xa7d9}, {0xa7f2, 0xa827}, {0xa82c, 0xa82c}, {0xa830, 0xa835}, {0xa840, 0xa873}, {0xa880, 0xa8c5}, {0xa8d0, 0xa8d9}, {0xa8e0, 0xa8f7},
  {0xa8fb, 0xa8fb}, {0xa8fd, 0xa92d}, {0xa930, 0xa953}, {0xa960, 0xa97c}, {0xa980, 0xa9c0}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9fe}, {0xaa00, 0xaa36},
  {0xaa40, 0xaa4d}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaef}, {0xaaf2, 0xaaf6}, {0xab01, 0xab06},
  {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabea}, {0xabec, 0xabed},
  {0xabf0, 0xabf9}, {0xac00, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17},
  {0xfb1d, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1}, {0xfbd3, 0xfd3d},
  {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe00, 0xfe0f}, {0xfe20, 0xfe2f}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19},
  {0xff21, 0xff3a}, {0xff41, 0xff5a}, {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b},
  {0x1000d, 0x10026}, {0x10028, 0x1003a}, {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10107, 0x10133}, {0x10140, 0x10178},
  {0x1018a, 0x1018b}, {0x101fd, 0x101fd}, {0x10280, 0x1029c}, {0x102a0, 0x102d0}, {0x102e0, 0x102fb}, {0x10300, 0x10323}, {0x1032d, 0x1034a}, {0x10350, 0x1037a},
  {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf}, {0x103d1, 0x103d5}, {0x10400, 0x1049d}, {0x104a0, 0x104a9}, {0x104b0, 0x104d3}, {0x104d8, 0x104fb},
  {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a}, {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595}, {0x10597, 0x105a1}, {0x105a3, 0x105b1},
  {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736}, {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785}, {0x10787, 0x107b0}, {0x107b2, 0x107ba},
  {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835}, {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855}, {0x10858, 0x10876}, {0x10879, 0x1089e},
  {0x108a7, 0x108af}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5}, {0x108fb, 0x1091b}, {0x10920, 0x1092b},
};

static TSCharacterRange sym_word_character_set_3[] = {
  {'0', '9'}, {'A', 'Z'}, {'_', '_'}, {'a', 'z'}, {0xaa, 0xaa}, {0xb2, 0xb3}, {0xb5, 0xb5}, {0xb9, 0xba},
  {0xbc, 0xbe}, {0xc0, 0xd6}, {0xd8, 0xf6}, {0xf8, 0x2c1}, {0x2c6, 0x2d1}, {0x2e0, 0x2e4}, {0x2ec, 0x2ec}, {0x2ee, 0x2ee},
  {0x370, 0x374}, {0x376, 0x377}, {0x37a, 0x37d}, {0x37f, 0x37f}, {0x386, 0x386}, {0x388, 0x38a}, {0x38c, 0x38c}, {0x38e, 0x3a1},
  {0x3a3, 0x3f5}, {0x3f7, 0x481}, {0x48a, 0x52f}, {0x531, 0x556}, {0x559, 0x559}, {0x560, 0x588}, {0x5d0, 0x5ea}, {0x5ef, 0x5f2},
  {0x620, 0x64a}, {0x660, 0x669}, {0x66e, 0x66f}, {0x671, 0x6d3}, {0x6d5, 0x6d5}, {0x6e5, 0x6e6}, {0x6ee, 0x6fc}, {0x6ff, 0x6ff},
  {0x710, 0x710}, {0x712, 0x72f}, {0x74d, 0x7a5}, {0x7b1, 0x7b1}, {0x7c0, 0x7ea}, {0x7f4, 0x7f5}, {0x7fa, 0x7fa}, {0x800, 0x815},
  {0x81a, 0x81a}, {0x824, 0x824}, {0x828, 0x828}, {0x840, 0x858}, {0x860, 0x86a}, {0x870, 0x887}, {0x889, 0x88e}, {0x8a0, 0x8c9},
  {0x904, 0x939}, {0x93d, 0x93d}, {0x950, 0x950}, {0x958, 0x961}, {0x966, 0x96f}, {0x971, 0x980}, {0x985, 0x98c}, {0x98f, 0x990},
  {0x993, 0x9a8}, {0x9aa, 0x9b0}, {0x9b2, 0x9b2}, {0x9b6, 0x9b9}, {0x9bd, 0x9bd}, {0x9ce, 0x9ce}, {0x9dc, 0x9dd}, {0x9df, 0x9e1},
  {0x9e6, 0x9f1}, {0x9f4, 0x9f9}, {0x9fc, 0x9fc}, {0xa05, 0xa0a}, {0xa0f, 0xa10}, {0xa13, 0xa28}, {0xa2a, 0xa30}, {0xa32, 0xa33},
  {0xa35, 0xa36}, {0xa38, 0xa39}, {0xa59, 0xa5c}, {0xa5e, 0xa5e}, {0xa66, 0xa6f}, {0xa72, 0xa74}, {0xa85, 0xa8d}, {0xa8f, 0xa91},
  {0xa93, 0xaa8}, {0xaaa, 0xab0}, {0xab2, 0xab3}, {0xab5, 0xab9}, {0xabd, 0xabd}, {0xad0, 0xad0}, {0xae0, 0xae1}, {0xae6, 0xaef},
  {0xaf9, 0xaf9}, {0xb05, 0xb0c}, {0xb0f, 0xb10}, {0xb13, 0xb28}, {0xb2a, 0xb30}, {0xb32, 0xb33}, {0xb35, 0xb39}, {0xb3d, 0xb3d},
  {0xb5c, 0xb5d}, {0xb5f, 0xb61}, {0xb66, 0xb6f}, {0xb71, 0xb77}, {0xb83, 0xb83}, {0xb85, 0xb8a}, {0xb8e, 0xb90}, {0xb92, 0xb95},
  {0xb99, 0xb9a}, {0xb9c, 0xb9c}, {0xb9e, 0xb9f}, {0xba3, 0xba4}, {0xba8, 0xbaa}, {0xbae, 0xbb9}, {0xbd0, 0xbd0}, {0xbe6, 0xbf2},
  {0xc05, 0xc0c}, {0xc0e, 0xc10}, {0xc12, 0xc28}, {0xc2a, 0xc39}, {0xc3d, 0xc3d}, {0xc58, 0xc5a}, {0xc5d, 0xc5d}, {0xc60, 0xc61},
  {0xc66, 0xc6f}, {0xc78, 0xc7e}, {0xc80, 0xc80}, {0xc85, 0xc8c}, {0xc8e, 0xc90}, {0xc92, 0xca8}, {0xcaa, 0xcb3}, {0xcb5, 0xcb9},
  {0xcbd, 0xcbd}, {0xcdd, 0xcde}, {0xce0, 0xce1}, {0xce6, 0xcef}, {0xcf1, 0xcf2}, {0xd04, 0xd0c}, {0xd0e, 0xd10}, {0xd12, 0xd3a},
  {0xd3d, 0xd3d}, {0xd4e, 0xd4e}, {0xd54, 0xd56}, {0xd58, 0xd61}, {0xd66, 0xd78}, {0xd7a, 0xd7f}, {0xd85, 0xd96}, {0xd9a, 0xdb1},
  {0xdb3, 0xdbb}, {0xdbd, 0xdbd}, {0xdc0, 0xdc6}, {0xde6, 0xdef}, {0xe01, 0xe30}, {0xe32, 0xe33}, {0xe40, 0xe46}, {0xe50, 0xe59},
  {0xe81, 0xe82}, {0xe84, 0xe84}, {0xe86, 0xe8a}, {0xe8c, 0xea3}, {0xea5, 0xea5}, {0xea7, 0xeb0}, {0xeb2, 0xeb3}, {0xebd, 0xebd},
  {0xec0, 0xec4}, {0xec6, 0xec6}, {0xed0, 0xed9}, {0xedc, 0xedf}, {0xf00, 0xf00}, {0xf20, 0xf33}, {0xf40, 0xf47}, {0xf49, 0xf6c},
  {0xf88, 0xf8c}, {0x1000, 0x102a}, {0x103f, 0x1049}, {0x1050, 0x1055}, {0x105a, 0x105d}, {0x1061, 0x1061}, {0x1065, 0x1066}, {0x106e, 0x1070},
  {0x1075, 0x1081}, {0x108e, 0x108e}, {0x1090, 0x1099}, {0x10a0, 0x10c5}, {0x10c7, 0x10c7}, {0x10cd, 0x10cd}, {0x10d0, 0x10fa}, {0x10fc, 0x1248},
  {0x124a, 0x124d}, {0x1250, 0x1256}, {0x1258, 0x1258}, {0x125a, 0x125d}, {0x1260, 0x1288}, {0x128a, 0x128d}, {0x1290, 0x12b0}, {0x12b2, 0x12b5},
  {0x12b8, 0x12be}, {0x12c0, 0x12c0}, {0x12c2, 0x12c5}, {0x12c8, 0x12d6}, {0x12d8, 0x1310}, {0x1312, 0x1315}, {0x1318, 0x135a}, {0x1369, 0x137c},
  {0x1380, 0x138f}, {0x13a0, 0x13f5}, {0x13f8, 0x13fd}, {0x1401, 0x166c}, {0x166f, 0x167f}, {0x1681, 0x169a}, {0x16a0, 0x16ea}, {0x16ee, 0x16f8},
  {0x1700, 0x1711}, {0x171f, 0x1731}, {0x1740, 0x1751}, {0x1760, 0x176c}, {0x176e, 0x1770}, {0x1780, 0x17b3}, {0x17d7, 0x17d7}, {0x17dc, 0x17dc},
  {0x17e0, 0x17e9}, {0x17f0, 0x17f9}, {0x1810, 0x1819}, {0x1820, 0x1878}, {0x1880, 0x1884}, {0x1887, 0x18a8}, {0x18aa, 0x18aa}, {0x18b0, 0x18f5},
  {0x1900, 0x191e}, {0x1946, 0x196d}, {0x1970, 0x1974}, {0x1980, 0x19ab}, {0x19b0, 0x19c9}, {0x19d0, 0x19da}, {0x1a00, 0x1a16}, {0x1a20, 0x1a54},
  {0x1a80, 0x1a89}, {0x1a90, 0x1a99}, {0x1aa7, 0x1aa7}, {0x1b05, 0x1b33}, {0x1b45, 0x1b4c}, {0x1b50, 0x1b59}, {0x1b83, 0x1ba0}, {0x1bae, 0x1be5},
  {0x1c00, 0x1c23}, {0x1c40, 0x1c49}, {0x1c4d, 0x1c7d}, {0x1c80, 0x1c88}, {0x1c90, 0x1cba}, {0x1cbd, 0x1cbf}, {0x1ce9, 0x1cec}, {0x1cee, 0x1cf3},
  {0x1cf5, 0x1cf6}, {0x1cfa, 0x1cfa}, {0x1d00, 0x1dbf}, {0x1e00, 0x1f15}, {0x1f18, 0x1f1d}, {0x1f20, 0x1f45}, {0x1f48, 0x1f4d}, {0x1f50, 0x1f57},
  {0x1f59, 0x1f59}, {0x1f5b, 0x1f5b}, {0x1f5d, 0x1f5d}, {0x1f5f, 0x1f7d}, {0x1f80, 0x1fb4}, {0x1fb6, 0x1fbc}, {0x1fbe, 0x1fbe}, {0x1fc2, 0x1fc4},
  {0x1fc6, 0x1fcc}, {0x1fd0, 0x1fd3}, {0x1fd6, 0x1fdb}, {0x1fe0, 0x1fec}, {0x1ff2, 0x1ff4}, {0x1ff6, 0x1ffc}, {0x2070, 0x2071}, {0x2074, 0x2079},
  {0x207f, 0x2089}, {0x2090, 0x209c}, {0x2102, 0x2102}, {0x2107, 0x2107}, {0x210a, 0x2113}, {0x2115, 0x2115}, {0x2119, 0x211d}, {0x2124, 0x2124},
  {0x2126, 0x2126}, {0x2128, 0x2128}, {0x212a, 0x212d}, {0x212f, 0x2139}, {0x213c, 0x213f}, {0x2145, 0x2149}, {0x214e, 0x214e}, {0x2150, 0x2189},
  {0x2460, 0x249b}, {0x24ea, 0x24ff}, {0x2776, 0x2793}, {0x2c00, 0x2ce4}, {0x2ceb, 0x2cee}, {0x2cf2, 0x2cf3}, {0x2cfd, 0x2cfd}, {0x2d00, 0x2d25},
  {0x2d27, 0x2d27}, {0x2d2d, 0x2d2d}, {0x2d30, 0x2d67}, {0x2d6f, 0x2d6f}, {0x2d80, 0x2d96}, {0x2da0, 0x2da6}, {0x2da8, 0x2dae}, {0x2db0, 0x2db6},
  {0x2db8, 0x2dbe}, {0x2dc0, 0x2dc6}, {0x2dc8, 0x2dce}, {0x2dd0, 0x2dd6}, {0x2dd8, 0x2dde}, {0x2e2f, 0x2e2f}, {0x3005, 0x3007}, {0x3021, 0x3029},
  {0x3031, 0x3035}, {0x3038, 0x303c}, {0x3041, 0x3096}, {0x309d, 0x309f}, {0x30a1, 0x30fa}, {0x30fc, 0x30ff}, {0x3105, 0x312f}, {0x3131, 0x318e},
  {0x3192, 0x3195}, {0x31a0, 0x31bf}, {0x31f0, 0x31ff}, {0x3220, 0x3229}, {0x3248, 0x324f}, {0x3251, 0x325f}, {0x3280, 0x3289}, {0x32b1, 0x32bf},
  {0x3400, 0x4dbf}, {0x4e00, 0xa48c}, {0xa4d0, 0xa4fd}, {0xa500, 0xa60c}, {0xa610, 0xa62b}, {0xa640, 0xa66e}, {0xa67f, 0xa69d}, {0xa6a0, 0xa6ef},
  {0xa717, 0xa71f}, {0xa722, 0xa788}, {0xa78b, 0xa7ca}, {0xa7d0, 0xa7d1}, {0xa7d3, 0xa7d3}, {0xa7d5, 0xa7d9}, {0xa7f2, 0xa801}, {0xa803, 0xa805},
  {0xa807, 0xa80a}, {0xa80c, 0xa822}, {0xa830, 0xa835}, {0xa840, 0xa873}, {0xa882, 0xa8b3}, {0xa8d0, 0xa8d9}, {0xa8f2, 0xa8f7}, {0xa8fb, 0xa8fb},
  {0xa8fd, 0xa8fe}, {0xa900, 0xa925}, {0xa930, 0xa946}, {0xa960, 0xa97c}, {0xa984, 0xa9b2}, {0xa9cf, 0xa9d9}, {0xa9e0, 0xa9e4}, {0xa9e6, 0xa9fe},
  {0xaa00, 0xaa28}, {0xaa40, 0xaa42}, {0xaa44, 0xaa4b}, {0xaa50, 0xaa59}, {0xaa60, 0xaa76}, {0xaa7a, 0xaa7a}, {0xaa7e, 0xaaaf}, {0xaab1, 0xaab1},
  {0xaab5, 0xaab6}, {0xaab9, 0xaabd}, {0xaac0, 0xaac0}, {0xaac2, 0xaac2}, {0xaadb, 0xaadd}, {0xaae0, 0xaaea}, {0xaaf2, 0xaaf4}, {0xab01, 0xab06},
  {0xab09, 0xab0e}, {0xab11, 0xab16}, {0xab20, 0xab26}, {0xab28, 0xab2e}, {0xab30, 0xab5a}, {0xab5c, 0xab69}, {0xab70, 0xabe2}, {0xabf0, 0xabf9},
  {0xac00, 0xd7a3}, {0xd7b0, 0xd7c6}, {0xd7cb, 0xd7fb}, {0xf900, 0xfa6d}, {0xfa70, 0xfad9}, {0xfb00, 0xfb06}, {0xfb13, 0xfb17}, {0xfb1d, 0xfb1d},
  {0xfb1f, 0xfb28}, {0xfb2a, 0xfb36}, {0xfb38, 0xfb3c}, {0xfb3e, 0xfb3e}, {0xfb40, 0xfb41}, {0xfb43, 0xfb44}, {0xfb46, 0xfbb1}, {0xfbd3, 0xfd3d},
  {0xfd50, 0xfd8f}, {0xfd92, 0xfdc7}, {0xfdf0, 0xfdfb}, {0xfe70, 0xfe74}, {0xfe76, 0xfefc}, {0xff10, 0xff19}, {0xff21, 0xff3a}, {0xff41, 0xff5a},
  {0xff66, 0xffbe}, {0xffc2, 0xffc7}, {0xffca, 0xffcf}, {0xffd2, 0xffd7}, {0xffda, 0xffdc}, {0x10000, 0x1000b}, {0x1000d, 0x10026}, {0x10028, 0x1003a},
  {0x1003c, 0x1003d}, {0x1003f, 0x1004d}, {0x10050, 0x1005d}, {0x10080, 0x100fa}, {0x10107, 0x10133}, {0x10140, 0x10178}, {0x1018a, 0x1018b}, {0x10280, 0x1029c},
  {0x102a0, 0x102d0}, {0x102e1, 0x102fb}, {0x10300, 0x10323}, {0x1032d, 0x1034a}, {0x10350, 0x10375}, {0x10380, 0x1039d}, {0x103a0, 0x103c3}, {0x103c8, 0x103cf},
  {0x103d1, 0x103d5}, {0x10400, 0x1049d}, {0x104a0, 0x104a9}, {0x104b0, 0x104d3}, {0x104d8, 0x104fb}, {0x10500, 0x10527}, {0x10530, 0x10563}, {0x10570, 0x1057a},
  {0x1057c, 0x1058a}, {0x1058c, 0x10592}, {0x10594, 0x10595}, {0x10597, 0x105a1}, {0x105a3, 0x105b1}, {0x105b3, 0x105b9}, {0x105bb, 0x105bc}, {0x10600, 0x10736},
  {0x10740, 0x10755}, {0x10760, 0x10767}, {0x10780, 0x10785}, {0x10787, 0x107b0}, {0x107b2, 0x107ba}, {0x10800, 0x10805}, {0x10808, 0x10808}, {0x1080a, 0x10835},
  {0x10837, 0x10838}, {0x1083c, 0x1083c}, {0x1083f, 0x10855}, {0x10858, 0x10876}, {0x10879, 0x1089e}, {0x108a7, 0x108af}, {0x108e0, 0x108f2}, {0x108f4, 0x108f5},
  {0x108fb, 0x1091b}, {0x10920, 0x1092b},
};

static bool ts_lex(TSLexer *lexer, TSStateId state) {
  START_LEXER();
  eof = lexer->eof(lexer);
  switch (state) {
    case 0:
      if (eof) ADVANCE(127);
      ADVANCE_MAP(
        '"', 146,
        '#', 309,
        '(', 142,
        ')', 143,
        '*', 144,
        '+', 135,
        '-', 136,
        '/', 137,
        ':', 138,
        ';', 130,
        '=', 131,
        'A', 230,
        'B', 228,
        'C', 205,
        'D', 219,
        'E', 231,
        'G', 209,
        'H', 218,
        'I', 211,
        'J', 163,
        'K', 166,
        'M', 225,
        'N', 162,
        'P', 215,
        'R', 223,
        'S', 212,
        'T', 216,
        'U', 206,
        'V', 222,
        'Z', 207,
        '\\', 110,
        'a', 293,
        'b', 236,
        'c', 259,
        'd', 167,
        'f', 254,
        'g', 168,
        'h', 165,
        'i', 277,
        'k', 226,
        'l', 169,
        'm', 164,
        'n', 245,
        'o', 305,
        'p', 253,
        'q', 294,
        's', 170,
        't', 246,
        'u', 273,
        'w', 255,
        'y', 237,
        '{', 132,
        '}', 133,
        0xb0, 201,
        0xb1, 140,
        0xb5, 273,
        0xba, 177,
        0xd7, 141,
        0x2da, 201,
        0x3bc, 273,
        'L', 180,
        'W', 180,
        '%', 203,
        0x2103, 203,
        0x2109, 203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(155);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(125);
      if (set_contains(sym_word_character_set_1, 428, lookahead)) ADVANCE(307);
      END_STATE();
    case 1:
      if (lookahead == '"') ADVANCE(146);
      if (lookahead == '#') ADVANCE(148);
      if (lookahead == '\\') ADVANCE(111);
      if (lookahead == '\n' ||
          lookahead == '\r') SKIP(3);
      if (set_contains(extras_character_set_4, 10, lookahead)) ADVANCE(147);
      if (lookahead != 0) ADVANCE(149);
      END_STATE();
    case 2:
      ADVANCE_MAP(
        '#', 309,
        ')', 143,
        '*', 144,
        '+', 134,
        '-', 136,
        '/', 137,
        'A', 32,
        'B', 30,
        'C', 7,
        'D', 21,
        'E', 33,
        'G', 11,
        'H', 20,
        'I', 13,
        'J', 187,
        'K', 190,
        'M', 27,
        'N', 186,
        'P', 17,
        'R', 25,
        'S', 14,
        'T', 18,
        'U', 8,
        'V', 24,
        'Z', 9,
        'a', 98,
        'b', 38,
        'c', 64,
        'd', 191,
        'f', 58,
        'g', 192,
        'h', 189,
        'i', 81,
        'k', 28,
        'l', 193,
        'm', 188,
        'n', 49,
        'o', 109,
        'p', 57,
        'q', 97,
        's', 194,
        't', 51,
        'u', 77,
        'w', 59,
        'y', 39,
        0xb0, 201,
        0xb5, 77,
        0xba, 201,
        0x2da, 201,
        0x3bc, 77,
        '%', 203,
        'L', 203,
        'W', 203,
        0x2103, 203,
        0x2109, 203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(156);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(2);
      END_STATE();
    case 3:
      if (lookahead == '#') ADVANCE(309);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(3);
      END_STATE();
    case 4:
      if (lookahead == '-') ADVANCE(139);
      END_STATE();
    case 5:
      if (lookahead == '-') ADVANCE(119);
      END_STATE();
    case 6:
      ADVANCE_MAP(
        'A', 32,
        'B', 30,
        'C', 7,
        'D', 21,
        'E', 33,
        'G', 11,
        'H', 20,
        'I', 13,
        'J', 187,
        'K', 190,
        'M', 27,
        'N', 186,
        'P', 17,
        'R', 25,
        'S', 14,
        'T', 18,
        'U', 8,
        'V', 24,
        'Z', 9,
        'a', 98,
        'b', 38,
        'c', 64,
        'd', 191,
        'f', 58,
        'g', 192,
        'h', 189,
        'i', 81,
        'k', 28,
        'l', 193,
        'm', 188,
        'n', 49,
        'o', 109,
        'p', 57,
        'q', 97,
        's', 194,
        't', 51,
        'u', 77,
        'w', 59,
        'y', 39,
        0xb0, 201,
        0xb5, 77,
        0xba, 201,
        0x2da, 201,
        0x3bc, 77,
        '%', 203,
        'L', 203,
        'W', 203,
        0x2103, 203,
        0x2109, 203,
      );
      END_STATE();
    case 7:
      if (lookahead == 'A') ADVANCE(12);
      if (lookahead == 'H') ADVANCE(15);
      if (lookahead == 'N') ADVANCE(35);
      if (lookahead == 'Z') ADVANCE(19);
      END_STATE();
    case 8:
      if (lookahead == 'A') ADVANCE(16);
      if (lookahead == 'S') ADVANCE(12);
      END_STATE();
    case 9:
      if (lookahead == 'A') ADVANCE(29);
      END_STATE();
    case 10:
      if (lookahead == 'B') ADVANCE(203);
      END_STATE();
    case 11:
      if (lookahead == 'B') ADVANCE(26);
      if (lookahead == 'P') ADVANCE(36);
      END_STATE();
    case 12:
      if (lookahead == 'D') ADVANCE(203);
      END_STATE();
    case 13:
      if (lookahead == 'D') ADVANCE(29);
      if (lookahead == 'L') ADVANCE(31);
      if (lookahead == 'N') ADVANCE(29);
      if (lookahead == 'S') ADVANCE(19);
      END_STATE();
    case 14:
      if (lookahead == 'E') ADVANCE(19);
      if (lookahead == 'G') ADVANCE(12);
      END_STATE();
    case 15:
      if (lookahead == 'F') ADVANCE(203);
      END_STATE();
    case 16:
      if (lookahead == 'H') ADVANCE(203);
      END_STATE();
    case 17:
      if (lookahead == 'H') ADVANCE(26);
      if (lookahead == 'L') ADVANCE(23);
      if (lookahead == 'a') ADVANCE(203);
      END_STATE();
    case 18:
      if (lookahead == 'H') ADVANCE(10);
      if (lookahead == 'R') ADVANCE(35);
      if (lookahead == 'W') ADVANCE(12);
      if (lookahead == 'o') ADVANCE(92);
      END_STATE();
    case 19:
      if (lookahead == 'K') ADVANCE(203);
      END_STATE();
    case 20:
      if (lookahead == 'K') ADVANCE(12);
      if (lookahead == 'U') ADVANCE(15);
      END_STATE();
    case 21:
      if (lookahead == 'K') ADVANCE(19);
      END_STATE();
    case 22:
      if (lookahead == 'L') ADVANCE(203);
      END_STATE();
    case 23:
      if (lookahead == 'N') ADVANCE(203);
      END_STATE();
    case 24:
      if (lookahead == 'N') ADVANCE(12);
      END_STATE();
    case 25:
      if (lookahead == 'O') ADVANCE(23);
      if (lookahead == 'S') ADVANCE(12);
      END_STATE();
    case 26:
      if (lookahead == 'P') ADVANCE(203);
      END_STATE();
    case 27:
      if (lookahead == 'P') ADVANCE(36);
      if (lookahead == 'X') ADVANCE(23);
      if (lookahead == 'Y') ADVANCE(29);
      if (lookahead == 's') ADVANCE(71);
      END_STATE();
    case 28:
      if (lookahead == 'P') ADVANCE(36);
      if (lookahead == 's') ADVANCE(71);
      if (lookahead == 'J' ||
          lookahead == 'N' ||
          lookahead == 'W' ||
          lookahead == 'g' ||
          lookahead == 'm') ADVANCE(203);
      END_STATE();
    case 29:
      if (lookahead == 'R') ADVANCE(203);
      END_STATE();
    case 30:
      if (lookahead == 'R') ADVANCE(22);
      END_STATE();
    case 31:
      if (lookahead == 'S') ADVANCE(203);
      END_STATE();
    case 32:
      if (lookahead == 'U') ADVANCE(12);
      END_STATE();
    case 33:
      if (lookahead == 'U') ADVANCE(29);
      END_STATE();
    case 34:
      if (lookahead == 'W') ADVANCE(203);
      END_STATE();
    case 35:
      if (lookahead == 'Y') ADVANCE(203);
      END_STATE();
    case 36:
      if (lookahead == 'a') ADVANCE(203);
      END_STATE();
    case 37:
      if (lookahead == 'a') ADVANCE(78);
      END_STATE();
    case 38:
      if (lookahead == 'a') ADVANCE(90);
      END_STATE();
    case 39:
      if (lookahead == 'a') ADVANCE(94);
      if (lookahead == 'd') ADVANCE(200);
      if (lookahead == 'e') ADVANCE(40);
      END_STATE();
    case 40:
      if (lookahead == 'a') ADVANCE(91);
      END_STATE();
    case 41:
      if (lookahead == 'c') ADVANCE(197);
      END_STATE();
    case 42:
      if (lookahead == 'c') ADVANCE(95);
      if (lookahead == 'l') ADVANCE(196);
      if (lookahead == 'n') ADVANCE(199);
      END_STATE();
    case 43:
      if (lookahead == 'c') ADVANCE(61);
      END_STATE();
    case 44:
      if (lookahead == 'd') ADVANCE(203);
      END_STATE();
    case 45:
      if (lookahead == 'd') ADVANCE(198);
      END_STATE();
    case 46:
      if (lookahead == 'd') ADVANCE(268);
      if (set_contains(sym_word_character_set_3, 474, lookahead)) ADVANCE(307);
      END_STATE();
    case 47:
      if (lookahead == 'd') ADVANCE(72);
      END_STATE();
    case 48:
      if (lookahead == 'e') ADVANCE(203);
      END_STATE();
    case 49:
      if (lookahead == 'e') ADVANCE(106);
      END_STATE();
    case 50:
      if (lookahead == 'e') ADVANCE(107);
      END_STATE();
    case 51:
      if (lookahead == 'e') ADVANCE(107);
      if (lookahead == 'h') ADVANCE(88);
      if (lookahead == 'o') ADVANCE(92);
      END_STATE();
    case 52:
      if (lookahead == 'e') ADVANCE(198);
      END_STATE();
    case 53:
      if (lookahead == 'e') ADVANCE(75);
      END_STATE();
    case 54:
      if (lookahead == 'e') ADVANCE(97);
      END_STATE();
    case 55:
      if (lookahead == 'e') ADVANCE(90);
      END_STATE();
    case 56:
      if (lookahead == 'e') ADVANCE(90);
      if (lookahead == 'r') ADVANCE(48);
      END_STATE();
    case 57:
      if (lookahead == 'e') ADVANCE(93);
      if (lookahead == 'p') ADVANCE(77);
      if (lookahead == 's') ADVANCE(71);
      END_STATE();
    case 58:
      if (lookahead == 'e') ADVANCE(54);
      if (lookahead == 'l') ADVANCE(86);
      if (lookahead == 'o') ADVANCE(87);
      if (lookahead == 't') ADVANCE(204);
      END_STATE();
    case 59:
      if (lookahead == 'e') ADVANCE(53);
      END_STATE();
    case 60:
      if (lookahead == 'e') ADVANCE(91);
      if (lookahead == 'r') ADVANCE(52);
      END_STATE();
    case 61:
      if (lookahead == 'e') ADVANCE(83);
      END_STATE();
    case 62:
      if (lookahead == 'e') ADVANCE(103);
      END_STATE();
    case 63:
      if (lookahead == 'f') ADVANCE(203);
      END_STATE();
    case 64:
      if (lookahead == 'f') ADVANCE(77);
      if (lookahead == 'm') ADVANCE(204);
      if (lookahead == 'P' ||
          lookahead == 'c') ADVANCE(203);
      END_STATE();
    case 65:
      if (lookahead == 'f') ADVANCE(97);
      if (lookahead == 'i') ADVANCE(80);
      if (lookahead == 'm') ADVANCE(203);
      if (lookahead == 'y') ADVANCE(44);
      END_STATE();
    case 66:
      if (lookahead == 'f') ADVANCE(63);
      END_STATE();
    case 67:
      if (lookahead == 'g') ADVANCE(203);
      END_STATE();
    case 68:
      if (lookahead == 'g') ADVANCE(183);
      if (lookahead == 'n') ADVANCE(74);
      END_STATE();
    case 69:
      if (lookahead == 'h') ADVANCE(198);
      END_STATE();
    case 70:
      if (lookahead == 'h') ADVANCE(195);
      END_STATE();
    case 71:
      if (lookahead == 'i') ADVANCE(203);
      END_STATE();
    case 72:
      if (lookahead == 'i') ADVANCE(66);
      END_STATE();
    case 73:
      if (lookahead == 'i') ADVANCE(79);
      END_STATE();
    case 74:
      if (lookahead == 'i') ADVANCE(55);
      END_STATE();
    case 75:
      if (lookahead == 'k') ADVANCE(198);
      END_STATE();
    case 76:
      if (lookahead == 'l') ADVANCE(203);
      END_STATE();
    case 77:
      if (lookahead == 'm') ADVANCE(203);
      END_STATE();
    case 78:
      if (lookahead == 'm') ADVANCE(198);
      END_STATE();
    case 79:
      if (lookahead == 'm') ADVANCE(62);
      END_STATE();
    case 80:
      if (lookahead == 'n') ADVANCE(203);
      END_STATE();
    case 81:
      if (lookahead == 'n') ADVANCE(184);
      END_STATE();
    case 82:
      if (lookahead == 'n') ADVANCE(198);
      END_STATE();
    case 83:
      if (lookahead == 'n') ADVANCE(97);
      END_STATE();
    case 84:
      if (lookahead == 'n') ADVANCE(45);
      END_STATE();
    case 85:
      if (lookahead == 'n') ADVANCE(100);
      END_STATE();
    case 86:
      if (lookahead == 'o') ADVANCE(109);
      END_STATE();
    case 87:
      if (lookahead == 'o') ADVANCE(97);
      END_STATE();
    case 88:
      if (lookahead == 'o') ADVANCE(104);
      END_STATE();
    case 89:
      if (lookahead == 'o') ADVANCE(82);
      END_STATE();
    case 90:
      if (lookahead == 'r') ADVANCE(203);
      END_STATE();
    case 91:
      if (lookahead == 'r') ADVANCE(198);
      END_STATE();
    case 92:
      if (lookahead == 'r') ADVANCE(90);
      END_STATE();
    case 93:
      if (lookahead == 'r') ADVANCE(43);
      END_STATE();
    case 94:
      if (lookahead == 'r') ADVANCE(45);
      END_STATE();
    case 95:
      if (lookahead == 'r') ADVANCE(89);
      END_STATE();
    case 96:
      if (lookahead == 's') ADVANCE(203);
      END_STATE();
    case 97:
      if (lookahead == 't') ADVANCE(203);
      END_STATE();
    case 98:
      if (lookahead == 't') ADVANCE(77);
      END_STATE();
    case 99:
      if (lookahead == 't') ADVANCE(60);
      END_STATE();
    case 100:
      if (lookahead == 't') ADVANCE(69);
      END_STATE();
    case 101:
      if (lookahead == 't') ADVANCE(89);
      END_STATE();
    case 102:
      if (lookahead == 't') ADVANCE(52);
      END_STATE();
    case 103:
      if (lookahead == 't') ADVANCE(56);
      END_STATE();
    case 104:
      if (lookahead == 'u') ADVANCE(203);
      END_STATE();
    case 105:
      if (lookahead == 'u') ADVANCE(91);
      END_STATE();
    case 106:
      if (lookahead == 'w') ADVANCE(101);
      END_STATE();
    case 107:
      if (lookahead == 'x') ADVANCE(203);
      END_STATE();
    case 108:
      if (lookahead == 'y') ADVANCE(198);
      END_STATE();
    case 109:
      if (lookahead == 'z') ADVANCE(203);
      END_STATE();
    case 110:
      if (lookahead == '"' ||
          lookahead == '\\') ADVANCE(150);
      END_STATE();
    case 111:
      if (lookahead == '"' ||
          lookahead == '\\') ADVANCE(150);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(149);
      END_STATE();
    case 112:
      if (lookahead == '+' ||
          lookahead == '-') ADVANCE(115);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(158);
      END_STATE();
    case 113:
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(203);
      END_STATE();
    case 114:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(157);
      END_STATE();
    case 115:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(158);
      END_STATE();
    case 116:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(151);
      END_STATE();
    case 117:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(5);
      END_STATE();
    case 118:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(117);
      END_STATE();
    case 119:
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(116);
      END_STATE();
    case 120:
      if (set_contains(sym_word_character_set_3, 474, lookahead)) ADVANCE(307);
      END_STATE();
    case 121:
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r' &&
          lookahead != '"' &&
          lookahead != '\\') ADVANCE(149);
      END_STATE();
    case 122:
      if (eof) ADVANCE(127);
      ADVANCE_MAP(
        '\n', 128,
        '\r', 129,
        '"', 145,
        '#', 309,
        '(', 142,
        '*', 144,
        '+', 135,
        '-', 136,
        '/', 137,
        ':', 138,
        ';', 130,
        '{', 132,
        '}', 133,
        0xb1, 140,
        0xd7, 141,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(155);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(122);
      if (set_contains(sym_word_character_set_1, 428, lookahead)) ADVANCE(307);
      END_STATE();
    case 123:
      if (eof) ADVANCE(127);
      ADVANCE_MAP(
        '\n', 128,
        '\r', 129,
        '"', 145,
        '#', 309,
        '(', 142,
        '+', 135,
        '-', 136,
        '/', 137,
        ':', 138,
        ';', 130,
        'A', 230,
        'B', 228,
        'C', 205,
        'D', 219,
        'E', 231,
        'G', 209,
        'H', 218,
        'I', 211,
        'J', 163,
        'K', 166,
        'M', 225,
        'N', 162,
        'P', 215,
        'R', 223,
        'S', 212,
        'T', 216,
        'U', 206,
        'V', 222,
        'Z', 207,
        'a', 293,
        'b', 236,
        'c', 259,
        'd', 167,
        'f', 254,
        'g', 168,
        'h', 165,
        'i', 277,
        'k', 226,
        'l', 169,
        'm', 164,
        'n', 245,
        'o', 305,
        'p', 253,
        'q', 294,
        's', 170,
        't', 246,
        'u', 273,
        'w', 255,
        'y', 237,
        '{', 132,
        '}', 133,
        0xb0, 201,
        0xb1, 140,
        0xb5, 273,
        0xba, 177,
        0xd7, 141,
        0x2da, 201,
        0x3bc, 273,
        'L', 180,
        'W', 180,
        '%', 203,
        0x2103, 203,
        0x2109, 203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(155);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(123);
      if (set_contains(sym_word_character_set_1, 428, lookahead)) ADVANCE(307);
      END_STATE();
    case 124:
      if (eof) ADVANCE(127);
      ADVANCE_MAP(
        '\n', 128,
        '\r', 129,
        '#', 309,
        '*', 144,
        '+', 134,
        '-', 136,
        '/', 137,
        ';', 130,
        'A', 32,
        'B', 30,
        'C', 7,
        'D', 21,
        'E', 33,
        'G', 11,
        'H', 20,
        'I', 13,
        'J', 187,
        'K', 190,
        'M', 27,
        'N', 186,
        'P', 17,
        'R', 25,
        'S', 14,
        'T', 18,
        'U', 8,
        'V', 24,
        'Z', 9,
        'a', 98,
        'b', 38,
        'c', 64,
        'd', 191,
        'f', 58,
        'g', 192,
        'h', 189,
        'i', 81,
        'k', 28,
        'l', 193,
        'm', 188,
        'n', 49,
        'o', 109,
        'p', 57,
        'q', 97,
        's', 194,
        't', 51,
        'u', 77,
        'w', 59,
        'y', 39,
        '}', 133,
        0xb0, 201,
        0xb5, 77,
        0xba, 201,
        0x2da, 201,
        0x3bc, 77,
        '%', 203,
        'L', 203,
        'W', 203,
        0x2103, 203,
        0x2109, 203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(156);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(124);
      END_STATE();
    case 125:
      if (eof) ADVANCE(127);
      ADVANCE_MAP(
        '"', 145,
        '#', 309,
        '(', 142,
        ')', 143,
        '*', 144,
        '+', 135,
        '-', 136,
        '/', 137,
        ':', 138,
        ';', 130,
        '=', 131,
        'A', 230,
        'B', 228,
        'C', 205,
        'D', 219,
        'E', 231,
        'G', 209,
        'H', 218,
        'I', 211,
        'J', 163,
        'K', 166,
        'M', 225,
        'N', 162,
        'P', 215,
        'R', 223,
        'S', 212,
        'T', 216,
        'U', 206,
        'V', 222,
        'Z', 207,
        'a', 293,
        'b', 236,
        'c', 259,
        'd', 167,
        'f', 254,
        'g', 168,
        'h', 165,
        'i', 277,
        'k', 226,
        'l', 169,
        'm', 164,
        'n', 245,
        'o', 305,
        'p', 253,
        'q', 294,
        's', 170,
        't', 246,
        'u', 273,
        'w', 255,
        'y', 237,
        '{', 132,
        '}', 133,
        0xb0, 201,
        0xb1, 140,
        0xb5, 273,
        0xba, 177,
        0xd7, 141,
        0x2da, 201,
        0x3bc, 273,
        'L', 180,
        'W', 180,
        '%', 203,
        0x2103, 203,
        0x2109, 203,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(155);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(125);
      if (set_contains(sym_word_character_set_1, 428, lookahead)) ADVANCE(307);
      END_STATE();
    case 126:
      if (eof) ADVANCE(127);
      ADVANCE_MAP(
        '#', 309,
        '(', 142,
        ')', 143,
        '*', 144,
        '+', 134,
        '-', 136,
        '/', 137,
        '}', 133,
      );
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(156);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(126);
      if (set_contains(sym_word_character_set_1, 428, lookahead)) ADVANCE(307);
      END_STATE();
    case 127:
      ACCEPT_TOKEN(ts_builtin_sym_end);
      END_STATE();
    case 128:
      ACCEPT_TOKEN(anon_sym_LF);
      if (lookahead == '\n') ADVANCE(128);
      if (lookahead == '\r') ADVANCE(129);
      END_STATE();
    case 129:
      ACCEPT_TOKEN(anon_sym_CR);
      if (lookahead == '\n') ADVANCE(128);
      if (lookahead == '\r') ADVANCE(129);
      END_STATE();
    case 130:
      ACCEPT_TOKEN(anon_sym_SEMI);
      END_STATE();
    case 131:
      ACCEPT_TOKEN(anon_sym_EQ);
      END_STATE();
    case 132:
      ACCEPT_TOKEN(anon_sym_LBRACE);
      END_STATE();
    case 133:
      ACCEPT_TOKEN(anon_sym_RBRACE);
      END_STATE();
    case 134:
      ACCEPT_TOKEN(anon_sym_PLUS);
      END_STATE();
    case 135:
      ACCEPT_TOKEN(anon_sym_PLUS);
      if (lookahead == '/') ADVANCE(4);
      END_STATE();
    case 136:
      ACCEPT_TOKEN(anon_sym_DASH);
      END_STATE();
    case 137:
      ACCEPT_TOKEN(anon_sym_SLASH);
      END_STATE();
    case 138:
      ACCEPT_TOKEN(anon_sym_COLON);
      END_STATE();
    case 139:
      ACCEPT_TOKEN(anon_sym_PLUS_SLASH_DASH);
      END_STATE();
    case 140:
      ACCEPT_TOKEN(anon_sym_u00b1);
      END_STATE();
    case 141:
      ACCEPT_TOKEN(anon_sym_u00d7);
      END_STATE();
    case 142:
      ACCEPT_TOKEN(anon_sym_LPAREN);
      END_STATE();
    case 143:
      ACCEPT_TOKEN(anon_sym_RPAREN);
      END_STATE();
    case 144:
      ACCEPT_TOKEN(anon_sym_STAR);
      END_STATE();
    case 145:
      ACCEPT_TOKEN(anon_sym_DQUOTE);
      END_STATE();
    case 146:
      ACCEPT_TOKEN(anon_sym_DQUOTE2);
      END_STATE();
    case 147:
      ACCEPT_TOKEN(sym__text_content);
      if (lookahead == '#') ADVANCE(148);
      if (lookahead == '\\') ADVANCE(121);
      if (set_contains(extras_character_set_3, 9, lookahead)) ADVANCE(147);
      if (lookahead != 0 &&
          lookahead != '\t' &&
          lookahead != '\n' &&
          lookahead != '\r' &&
          lookahead != '"' &&
          lookahead != '#') ADVANCE(149);
      END_STATE();
    case 148:
      ACCEPT_TOKEN(sym__text_content);
      if (lookahead == '\\') ADVANCE(308);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r' &&
          lookahead != '"') ADVANCE(148);
      END_STATE();
    case 149:
      ACCEPT_TOKEN(sym__text_content);
      if (lookahead == '\\') ADVANCE(121);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r' &&
          lookahead != '"') ADVANCE(149);
      END_STATE();
    case 150:
      ACCEPT_TOKEN(sym_escape);
      END_STATE();
    case 151:
      ACCEPT_TOKEN(sym_date);
      END_STATE();
    case 152:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '-') ADVANCE(118);
      if (lookahead == '.') ADVANCE(114);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(156);
      END_STATE();
    case 153:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(114);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(152);
      END_STATE();
    case 154:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(114);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(153);
      END_STATE();
    case 155:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(114);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(154);
      END_STATE();
    case 156:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == '.') ADVANCE(114);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(156);
      END_STATE();
    case 157:
      ACCEPT_TOKEN(sym_number);
      if (lookahead == 'E' ||
          lookahead == 'e') ADVANCE(112);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(157);
      END_STATE();
    case 158:
      ACCEPT_TOKEN(sym_number);
      if (('0' <= lookahead && lookahead <= '9')) ADVANCE(158);
      END_STATE();
    case 159:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'C') ADVANCE(181);
      if (lookahead == 'F') ADVANCE(181);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 160:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'H') ADVANCE(263);
      if (lookahead == 'c') ADVANCE(266);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (lookahead == '2' ||
          lookahead == '3' ||
          lookahead == 0xb2 ||
          lookahead == 0xb3) ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 161:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'H') ADVANCE(263);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (lookahead == '2' ||
          lookahead == '3' ||
          lookahead == 0xb2 ||
          lookahead == 0xb3) ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 162:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'O') ADVANCE(217);
      if (lookahead == 'Z') ADVANCE(210);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 163:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'P') ADVANCE(233);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 164:
      ACCEPT_TOKEN(sym_unit);
      ADVANCE_MAP(
        '-', 120,
        'P', 234,
        'b', 236,
        'e', 295,
        'i', 240,
        'm', 161,
        'o', 281,
        '.', 6,
        '/', 6,
        0xb7, 6,
        '2', 180,
        '3', 180,
        'L', 180,
        'g', 180,
        'l', 180,
        0xb2, 180,
        0xb3, 180,
      );
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 165:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'P') ADVANCE(234);
      if (lookahead == 'o') ADVANCE(301);
      if (lookahead == 'r') ADVANCE(180);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 166:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'R') ADVANCE(232);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 167:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(304);
      if (lookahead == 'e') ADVANCE(264);
      if (lookahead == 'm') ADVANCE(306);
      if (lookahead == 't') ADVANCE(247);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 168:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(272);
      if (lookahead == 'r') ADVANCE(235);
      if (lookahead == 's') ADVANCE(273);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 169:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'b') ADVANCE(178);
      if (lookahead == 'i') ADVANCE(295);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 170:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(239);
      if (lookahead == 'q') ADVANCE(261);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 171:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(292);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 172:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'l') ADVANCE(269);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 173:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'o') ADVANCE(280);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 174:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 's') ADVANCE(180);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 175:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'u') ADVANCE(298);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 176:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(180);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 177:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(180);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 178:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'f' ||
          lookahead == 's') ADVANCE(180);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 179:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (lookahead == '2' ||
          lookahead == '3' ||
          lookahead == 0xb2 ||
          lookahead == 0xb3) ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 180:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 181:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(46);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 182:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '-') ADVANCE(47);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 183:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'C') ADVANCE(182);
      if (lookahead == 'F') ADVANCE(182);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 184:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'H') ADVANCE(67);
      if (lookahead == 'c') ADVANCE(70);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (lookahead == '2' ||
          lookahead == '3' ||
          lookahead == 0xb2 ||
          lookahead == 0xb3) ADVANCE(203);
      END_STATE();
    case 185:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'H') ADVANCE(67);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (lookahead == '2' ||
          lookahead == '3' ||
          lookahead == 0xb2 ||
          lookahead == 0xb3) ADVANCE(203);
      END_STATE();
    case 186:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'O') ADVANCE(19);
      if (lookahead == 'Z') ADVANCE(12);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 187:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'P') ADVANCE(35);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 188:
      ACCEPT_TOKEN(sym_unit);
      ADVANCE_MAP(
        'P', 36,
        'b', 38,
        'e', 99,
        'i', 42,
        'm', 185,
        'o', 85,
        '.', 6,
        '/', 6,
        0xb7, 6,
        '2', 203,
        '3', 203,
        'L', 203,
        'g', 203,
        'l', 203,
        0xb2, 203,
        0xb3, 203,
      );
      END_STATE();
    case 189:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'P') ADVANCE(36);
      if (lookahead == 'o') ADVANCE(105);
      if (lookahead == 'r') ADVANCE(203);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 190:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'R') ADVANCE(34);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 191:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'a') ADVANCE(108);
      if (lookahead == 'e') ADVANCE(68);
      if (lookahead == 'm') ADVANCE(113);
      if (lookahead == 't') ADVANCE(50);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 192:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'a') ADVANCE(76);
      if (lookahead == 'r') ADVANCE(37);
      if (lookahead == 's') ADVANCE(77);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 193:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'b') ADVANCE(202);
      if (lookahead == 'i') ADVANCE(99);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 194:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'e') ADVANCE(41);
      if (lookahead == 'q') ADVANCE(65);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 195:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'e') ADVANCE(96);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 196:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'l') ADVANCE(73);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 197:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'o') ADVANCE(84);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 198:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 's') ADVANCE(203);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 199:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'u') ADVANCE(102);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 200:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(203);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 201:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'C' ||
          lookahead == 'F') ADVANCE(203);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 202:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == 'f' ||
          lookahead == 's') ADVANCE(203);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 203:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      END_STATE();
    case 204:
      ACCEPT_TOKEN(sym_unit);
      if (lookahead == '.' ||
          lookahead == '/' ||
          lookahead == 0xb7) ADVANCE(6);
      if (lookahead == '2' ||
          lookahead == '3' ||
          lookahead == 0xb2 ||
          lookahead == 0xb3) ADVANCE(203);
      END_STATE();
    case 205:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'A') ADVANCE(210);
      if (lookahead == 'H') ADVANCE(213);
      if (lookahead == 'N') ADVANCE(233);
      if (lookahead == 'Z') ADVANCE(217);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 206:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'A') ADVANCE(214);
      if (lookahead == 'S') ADVANCE(210);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 207:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'A') ADVANCE(227);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 208:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'B') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 209:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'B') ADVANCE(224);
      if (lookahead == 'P') ADVANCE(234);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 210:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'D') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 211:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'D') ADVANCE(227);
      if (lookahead == 'L') ADVANCE(229);
      if (lookahead == 'N') ADVANCE(227);
      if (lookahead == 'S') ADVANCE(217);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 212:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'E') ADVANCE(217);
      if (lookahead == 'G') ADVANCE(210);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 213:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'F') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 214:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'H') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 215:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'H') ADVANCE(224);
      if (lookahead == 'L') ADVANCE(221);
      if (lookahead == 'a') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 216:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'H') ADVANCE(208);
      if (lookahead == 'R') ADVANCE(233);
      if (lookahead == 'W') ADVANCE(210);
      if (lookahead == 'o') ADVANCE(288);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 217:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'K') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 218:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'K') ADVANCE(210);
      if (lookahead == 'U') ADVANCE(213);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 219:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'K') ADVANCE(217);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 220:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'L') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 221:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'N') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 222:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'N') ADVANCE(210);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 223:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'O') ADVANCE(221);
      if (lookahead == 'S') ADVANCE(210);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 224:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'P') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 225:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'P') ADVANCE(234);
      if (lookahead == 'X') ADVANCE(221);
      if (lookahead == 'Y') ADVANCE(227);
      if (lookahead == 's') ADVANCE(267);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 226:
      ACCEPT_TOKEN(sym_word);
      ADVANCE_MAP(
        '-', 120,
        'P', 234,
        's', 267,
        'J', 180,
        'N', 180,
        'W', 180,
        'g', 180,
        'm', 180,
      );
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 227:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'R') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 228:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'R') ADVANCE(220);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 229:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'S') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 230:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'U') ADVANCE(210);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 231:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'U') ADVANCE(227);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 232:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'W') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 233:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'Y') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 234:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 235:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(274);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 236:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(286);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 237:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(290);
      if (lookahead == 'd') ADVANCE(176);
      if (lookahead == 'e') ADVANCE(238);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 238:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'a') ADVANCE(287);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 239:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'c') ADVANCE(173);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 240:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'c') ADVANCE(291);
      if (lookahead == 'l') ADVANCE(172);
      if (lookahead == 'n') ADVANCE(175);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 241:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'c') ADVANCE(257);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 242:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'd') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 243:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'd') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 244:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 245:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(302);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 246:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(303);
      if (lookahead == 'h') ADVANCE(284);
      if (lookahead == 'o') ADVANCE(288);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 247:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(303);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 248:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 249:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(271);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 250:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(294);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 251:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(286);
      if (lookahead == 'r') ADVANCE(244);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 252:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(286);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 253:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(289);
      if (lookahead == 'p') ADVANCE(273);
      if (lookahead == 's') ADVANCE(267);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 254:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(250);
      if (lookahead == 'l') ADVANCE(282);
      if (lookahead == 'o') ADVANCE(283);
      if (lookahead == 't') ADVANCE(179);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 255:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(249);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 256:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(287);
      if (lookahead == 'r') ADVANCE(248);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 257:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(279);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 258:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'e') ADVANCE(299);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 259:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'f') ADVANCE(273);
      if (lookahead == 'm') ADVANCE(179);
      if (lookahead == 'P' ||
          lookahead == 'c') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 260:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'f') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 261:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'f') ADVANCE(294);
      if (lookahead == 'i') ADVANCE(276);
      if (lookahead == 'm') ADVANCE(180);
      if (lookahead == 'y') ADVANCE(242);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 262:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'f') ADVANCE(260);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 263:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'g') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 264:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'g') ADVANCE(159);
      if (lookahead == 'n') ADVANCE(270);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 265:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'h') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 266:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'h') ADVANCE(171);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 267:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'i') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 268:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'i') ADVANCE(262);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 269:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'i') ADVANCE(275);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 270:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'i') ADVANCE(252);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 271:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'k') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 272:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'l') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 273:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'm') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 274:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'm') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 275:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'm') ADVANCE(258);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 276:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'n') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 277:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'n') ADVANCE(160);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 278:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'n') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 279:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'n') ADVANCE(294);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 280:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'n') ADVANCE(243);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 281:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'n') ADVANCE(296);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 282:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'o') ADVANCE(305);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 283:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'o') ADVANCE(294);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 284:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'o') ADVANCE(300);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 285:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'o') ADVANCE(278);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 286:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'r') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 287:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'r') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 288:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'r') ADVANCE(286);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 289:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'r') ADVANCE(241);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 290:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'r') ADVANCE(243);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 291:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'r') ADVANCE(285);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 292:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 's') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 293:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(273);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 294:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 295:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(256);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 296:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(265);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 297:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(285);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 298:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(248);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 299:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 't') ADVANCE(251);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 300:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'u') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 301:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'u') ADVANCE(287);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 302:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'w') ADVANCE(297);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 303:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'x') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 304:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'y') ADVANCE(174);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 305:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == 'z') ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 306:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (lookahead == '2' ||
          lookahead == 0xb2) ADVANCE(180);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 307:
      ACCEPT_TOKEN(sym_word);
      if (lookahead == '-') ADVANCE(120);
      if (set_contains(sym_word_character_set_2, 493, lookahead)) ADVANCE(307);
      END_STATE();
    case 308:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead == '"' ||
          lookahead == '\\') ADVANCE(309);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(148);
      END_STATE();
    case 309:
      ACCEPT_TOKEN(sym_comment);
      if (lookahead != 0 &&
          lookahead != '\n' &&
          lookahead != '\r') ADVANCE(309);
      END_STATE();
    default:
      return false;
  }
}

static bool ts_lex_keywords(TSLexer *lexer, TSStateId state) {
  START_LEXER();
  eof = lexer->eof(lexer);
  switch (state) {
    case 0:
      if (lookahead == 'l') ADVANCE(1);
      if (lookahead == 't') ADVANCE(2);
      if (lookahead == 'x') ADVANCE(3);
      if (set_contains(extras_character_set_4, 10, lookahead)) SKIP(0);
      END_STATE();
    case 1:
      if (lookahead == 'e') ADVANCE(4);
      END_STATE();
    case 2:
      if (lookahead == 'o') ADVANCE(5);
      END_STATE();
    case 3:
      ACCEPT_TOKEN(anon_sym_x);
      END_STATE();
    case 4:
      if (lookahead == 't') ADVANCE(6);
      END_STATE();
    case 5:
      ACCEPT_TOKEN(sym_to);
      END_STATE();
    case 6:
      ACCEPT_TOKEN(anon_sym_let);
      END_STATE();
    default:
      return false;
  }
}

static const TSLexMode ts_lex_modes[STATE_COUNT] = {
  [0] = {.lex_state = 0},
  [1] = {.lex_state = 122},
  [2] = {.lex_state = 122},
  [3] = {.lex_state = 122},
  [4] = {.lex_state = 122},
  [5] = {.lex_state = 122},
  [6] = {.lex_state = 122},
  [7] = {.lex_state = 122},
  [8] = {.lex_state = 123},
  [9] = {.lex_state = 123},
  [10] = {.lex_state = 123},
  [11] = {.lex_state = 123},
  [12] = {.lex_state = 122},
  [13] = {.lex_state = 122},
  [14] = {.lex_state = 122},
  [15] = {.lex_state = 122},
  [16] = {.lex_state = 122},
  [17] = {.lex_state = 122},
  [18] = {.lex_state = 123},
  [19] = {.lex_state = 123},
  [20] = {.lex_state = 123},
  [21] = {.lex_state = 122},
  [22] = {.lex_state = 123},
  [23] = {.lex_state = 123},
  [24] = {.lex_state = 123},
  [25] = {.lex_state = 123},
  [26] = {.lex_state = 122},
  [27] = {.lex_state = 123},
  [28] = {.lex_state = 122},
  [29] = {.lex_state = 122},
  [30] = {.lex_state = 122},
  [31] = {.lex_state = 122},
  [32] = {.lex_state = 122},
  [33] = {.lex_state = 122},
  [34] = {.lex_state = 122},
  [35] = {.lex_state = 122},
  [36] = {.lex_state = 122},
  [37] = {.lex_state = 122},
  [38] = {.lex_state = 122},
  [39] = {.lex_state = 122},
  [40] = {.lex_state = 122},
  [41] = {.lex_state = 122},
  [42] = {.lex_state = 122},
  [43] = {.lex_state = 122},
  [44] = {.lex_state = 122},
  [45] = {.lex_state = 122},
  [46] = {.lex_state = 122},
  [47] = {.lex_state = 122},
  [48] = {.lex_state = 122},
  [49] = {.lex_state = 122},
  [50] = {.lex_state = 122},
  [51] = {.lex_state = 122},
  [52] = {.lex_state = 122},
  [53] = {.lex_state = 124},
  [54] = {.lex_state = 124},
  [55] = {.lex_state = 124},
  [56] = {.lex_state = 124},
  [57] = {.lex_state = 126},
  [58] = {.lex_state = 126},
  [59] = {.lex_state = 126},
  [60] = {.lex_state = 124},
  [61] = {.lex_state = 124},
  [62] = {.lex_state = 126},
  [63] = {.lex_state = 126},
  [64] = {.lex_state = 126},
  [65] = {.lex_state = 126},
  [66] = {.lex_state = 126},
  [67] = {.lex_state = 126},
  [68] = {.lex_state = 126},
  [69] = {.lex_state = 126},
  [70] = {.lex_state = 126},
  [71] = {.lex_state = 126},
  [72] = {.lex_state = 126},
  [73] = {.lex_state = 124},
  [74] = {.lex_state = 124},
  [75] = {.lex_state = 124},
  [76] = {.lex_state = 126},
  [77] = {.lex_state = 124},
  [78] = {.lex_state = 122},
  [79] = {.lex_state = 122},
  [80] = {.lex_state = 122},
  [81] = {.lex_state = 122},
  [82] = {.lex_state = 122},
  [83] = {.lex_state = 122},
  [84] = {.lex_state = 122},
  [85] = {.lex_state = 122},
  [86] = {.lex_state = 122},
  [87] = {.lex_state = 122},
  [88] = {.lex_state = 122},
  [89] = {.lex_state = 122},
  [90] = {.lex_state = 122},
  [91] = {.lex_state = 122},
  [92] = {.lex_state = 126},
  [93] = {.lex_state = 126},
  [94] = {.lex_state = 126},
  [95] = {.lex_state = 126},
  [96] = {.lex_state = 122},
  [97] = {.lex_state = 126},
  [98] = {.lex_state = 126},
  [99] = {.lex_state = 122},
  [100] = {.lex_state = 2},
  [101] = {.lex_state = 122},
  [102] = {.lex_state = 122},
  [103] = {.lex_state = 122},
  [104] = {.lex_state = 126},
  [105] = {.lex_state = 126},
  [106] = {.lex_state = 122},
  [107] = {.lex_state = 122},
  [108] = {.lex_state = 126},
  [109] = {.lex_state = 126},
  [110] = {.lex_state = 126},
  [111] = {.lex_state = 122},
  [112] = {.lex_state = 122},
  [113] = {.lex_state = 126},
  [114] = {.lex_state = 126},
  [115] = {.lex_state = 126},
  [116] = {.lex_state = 122},
  [117] = {.lex_state = 2},
  [118] = {.lex_state = 122},
  [119] = {.lex_state = 122},
  [120] = {.lex_state = 0},
  [121] = {.lex_state = 0},
  [122] = {.lex_state = 122},
  [123] = {.lex_state = 122},
  [124] = {.lex_state = 122},
  [125] = {.lex_state = 122},
  [126] = {.lex_state = 0},
  [127] = {.lex_state = 122},
  [128] = {.lex_state = 122},
  [129] = {.lex_state = 0},
  [130] = {.lex_state = 0},
  [131] = {.lex_state = 0},
  [132] = {.lex_state = 122},
  [133] = {.lex_state = 122},
  [134] = {.lex_state = 0},
  [135] = {.lex_state = 0},
  [136] = {.lex_state = 0},
  [137] = {.lex_state = 122},
  [138] = {.lex_state = 0},
  [139] = {.lex_state = 122},
  [140] = {.lex_state = 122},
  [141] = {.lex_state = 1},
  [142] = {.lex_state = 1},
  [143] = {.lex_state = 1},
  [144] = {.lex_state = 1},
  [145] = {.lex_state = 1},
  [146] = {.lex_state = 126},
  [147] = {.lex_state = 126},
  [148] = {.lex_state = 126},
  [149] = {.lex_state = 126},
  [150] = {.lex_state = 0},
  [151] = {.lex_state = 126},
  [152] = {.lex_state = 126},
  [153] = {.lex_state = 126},
  [154] = {.lex_state = 126},
  [155] = {.lex_state = 0},
  [156] = {.lex_state = 126},
  [157] = {.lex_state = 126},
  [158] = {.lex_state = 0},
  [159] = {.lex_state = 126},
  [160] = {.lex_state = 126},
  [161] = {.lex_state = 126},
  [162] = {.lex_state = 126},
};

static const uint16_t ts_parse_table[LARGE_STATE_COUNT][SYMBOL_COUNT] = {
  [0] = {
    [ts_builtin_sym_end] = ACTIONS(1),
    [sym_word] = ACTIONS(1),
    [anon_sym_SEMI] = ACTIONS(1),
    [anon_sym_let] = ACTIONS(1),
    [anon_sym_EQ] = ACTIONS(1),
    [anon_sym_LBRACE] = ACTIONS(1),
    [anon_sym_RBRACE] = ACTIONS(1),
    [anon_sym_PLUS] = ACTIONS(1),
    [anon_sym_DASH] = ACTIONS(1),
    [anon_sym_SLASH] = ACTIONS(1),
    [anon_sym_COLON] = ACTIONS(1),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(1),
    [anon_sym_u00b1] = ACTIONS(1),
    [sym_to] = ACTIONS(1),
    [anon_sym_x] = ACTIONS(1),
    [anon_sym_u00d7] = ACTIONS(1),
    [anon_sym_LPAREN] = ACTIONS(1),
    [anon_sym_RPAREN] = ACTIONS(1),
    [anon_sym_STAR] = ACTIONS(1),
    [anon_sym_DQUOTE] = ACTIONS(1),
    [anon_sym_DQUOTE2] = ACTIONS(1),
    [sym_escape] = ACTIONS(1),
    [sym_date] = ACTIONS(1),
    [sym_number] = ACTIONS(1),
    [sym_unit] = ACTIONS(1),
    [sym_comment] = ACTIONS(3),
  },
  [1] = {
    [sym_source_file] = STATE(155),
    [sym__statement] = STATE(101),
    [sym__separator] = STATE(52),
    [sym_let] = STATE(101),
    [sym_entry] = STATE(101),
    [aux_sym_source_file_repeat1] = STATE(52),
    [aux_sym_source_file_repeat2] = STATE(95),
    [ts_builtin_sym_end] = ACTIONS(5),
    [sym_word] = ACTIONS(7),
    [anon_sym_LF] = ACTIONS(9),
    [anon_sym_CR_LF] = ACTIONS(9),
    [anon_sym_CR] = ACTIONS(9),
    [anon_sym_SEMI] = ACTIONS(9),
    [anon_sym_let] = ACTIONS(11),
    [sym_comment] = ACTIONS(13),
  },
  [2] = {
    [sym_block] = STATE(137),
    [sym__value] = STATE(3),
    [sym__amount] = STATE(3),
    [sym_quantity] = STATE(3),
    [sym_signed] = STATE(3),
    [sym_pair] = STATE(3),
    [sym_ratio] = STATE(3),
    [sym_plus_minus] = STATE(3),
    [sym_times] = STATE(3),
    [sym_parenthesis] = STATE(3),
    [sym_text] = STATE(3),
    [aux_sym_entry_repeat1] = STATE(3),
    [ts_builtin_sym_end] = ACTIONS(15),
    [sym_word] = ACTIONS(17),
    [anon_sym_LF] = ACTIONS(19),
    [anon_sym_CR_LF] = ACTIONS(19),
    [anon_sym_CR] = ACTIONS(19),
    [anon_sym_SEMI] = ACTIONS(19),
    [anon_sym_LBRACE] = ACTIONS(21),
    [anon_sym_PLUS] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(23),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(25),
    [anon_sym_u00b1] = ACTIONS(25),
    [sym_to] = ACTIONS(27),
    [anon_sym_x] = ACTIONS(29),
    [anon_sym_u00d7] = ACTIONS(29),
    [anon_sym_LPAREN] = ACTIONS(31),
    [anon_sym_DQUOTE] = ACTIONS(33),
    [sym_date] = ACTIONS(27),
    [sym_number] = ACTIONS(35),
    [sym_comment] = ACTIONS(13),
  },
  [3] = {
    [sym_block] = STATE(123),
    [sym__value] = STATE(6),
    [sym__amount] = STATE(6),
    [sym_quantity] = STATE(6),
    [sym_signed] = STATE(6),
    [sym_pair] = STATE(6),
    [sym_ratio] = STATE(6),
    [sym_plus_minus] = STATE(6),
    [sym_times] = STATE(6),
    [sym_parenthesis] = STATE(6),
    [sym_text] = STATE(6),
    [aux_sym_entry_repeat1] = STATE(6),
    [ts_builtin_sym_end] = ACTIONS(37),
    [sym_word] = ACTIONS(17),
    [anon_sym_LF] = ACTIONS(39),
    [anon_sym_CR_LF] = ACTIONS(39),
    [anon_sym_CR] = ACTIONS(39),
    [anon_sym_SEMI] = ACTIONS(39),
    [anon_sym_LBRACE] = ACTIONS(21),
    [anon_sym_PLUS] = ACTIONS(23),
    [anon_sym_DASH] = ACTIONS(23),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(25),
    [anon_sym_u00b1] = ACTIONS(25),
    [sym_to] = ACTIONS(41),
    [anon_sym_x] = ACTIONS(29),
    [anon_sym_u00d7] = ACTIONS(29),
    [anon_sym_LPAREN] = ACTIONS(31),
    [anon_sym_DQUOTE] = ACTIONS(33),
    [sym_date] = ACTIONS(41),
    [sym_number] = ACTIONS(35),
    [sym_comment] = ACTIONS(13),
  },
  [4] = {
    [sym_block] = STATE(139),
    [sym__value] = STATE(7),
    [sym__amount] = STATE(7),
    [sym_quantity] = STATE(7),
    [sym_signed] = STATE(7),
    [sym_pair] = STATE(7),
    [sym_ratio] = STATE(7),
    [sym_plus_minus] = STATE(7),
    [sym_times] = STATE(7),
    [sym_parenthesis] = STATE(7),
    [sym_text] = STATE(7),
    [aux_sym_entry_repeat1] = STATE(7),
    [sym_word] = ACTIONS(43),
    [anon_sym_LF] = ACTIONS(39),
    [anon_sym_CR_LF] = ACTIONS(39),
    [anon_sym_CR] = ACTIONS(39),
    [anon_sym_SEMI] = ACTIONS(39),
    [anon_sym_LBRACE] = ACTIONS(45),
    [anon_sym_RBRACE] = ACTIONS(39),
    [anon_sym_PLUS] = ACTIONS(47),
    [anon_sym_DASH] = ACTIONS(47),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(49),
    [anon_sym_u00b1] = ACTIONS(49),
    [sym_to] = ACTIONS(51),
    [anon_sym_x] = ACTIONS(53),
    [anon_sym_u00d7] = ACTIONS(53),
    [anon_sym_LPAREN] = ACTIONS(55),
    [anon_sym_DQUOTE] = ACTIONS(57),
    [sym_date] = ACTIONS(51),
    [sym_number] = ACTIONS(59),
    [sym_comment] = ACTIONS(13),
  },
  [5] = {
    [sym_block] = STATE(122),
    [sym__value] = STATE(4),
    [sym__amount] = STATE(4),
    [sym_quantity] = STATE(4),
    [sym_signed] = STATE(4),
    [sym_pair] = STATE(4),
    [sym_ratio] = STATE(4),
    [sym_plus_minus] = STATE(4),
    [sym_times] = STATE(4),
    [sym_parenthesis] = STATE(4),
    [sym_text] = STATE(4),
    [aux_sym_entry_repeat1] = STATE(4),
    [sym_word] = ACTIONS(43),
    [anon_sym_LF] = ACTIONS(19),
    [anon_sym_CR_LF] = ACTIONS(19),
    [anon_sym_CR] = ACTIONS(19),
    [anon_sym_SEMI] = ACTIONS(19),
    [anon_sym_LBRACE] = ACTIONS(45),
    [anon_sym_RBRACE] = ACTIONS(19),
    [anon_sym_PLUS] = ACTIONS(47),
    [anon_sym_DASH] = ACTIONS(47),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(49),
    [anon_sym_u00b1] = ACTIONS(49),
    [sym_to] = ACTIONS(61),
    [anon_sym_x] = ACTIONS(53),
    [anon_sym_u00d7] = ACTIONS(53),
    [anon_sym_LPAREN] = ACTIONS(55),
    [anon_sym_DQUOTE] = ACTIONS(57),
    [sym_date] = ACTIONS(61),
    [sym_number] = ACTIONS(59),
    [sym_comment] = ACTIONS(13),
  },
  [6] = {
    [sym__value] = STATE(6),
    [sym__amount] = STATE(6),
    [sym_quantity] = STATE(6),
    [sym_signed] = STATE(6),
    [sym_pair] = STATE(6),
    [sym_ratio] = STATE(6),
    [sym_plus_minus] = STATE(6),
    [sym_times] = STATE(6),
    [sym_parenthesis] = STATE(6),
    [sym_text] = STATE(6),
    [aux_sym_entry_repeat1] = STATE(6),
    [ts_builtin_sym_end] = ACTIONS(63),
    [sym_word] = ACTIONS(65),
    [anon_sym_LF] = ACTIONS(68),
    [anon_sym_CR_LF] = ACTIONS(68),
    [anon_sym_CR] = ACTIONS(68),
    [anon_sym_SEMI] = ACTIONS(68),
    [anon_sym_LBRACE] = ACTIONS(68),
    [anon_sym_PLUS] = ACTIONS(70),
    [anon_sym_DASH] = ACTIONS(70),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(73),
    [anon_sym_u00b1] = ACTIONS(73),
    [sym_to] = ACTIONS(76),
    [anon_sym_x] = ACTIONS(79),
    [anon_sym_u00d7] = ACTIONS(79),
    [anon_sym_LPAREN] = ACTIONS(82),
    [anon_sym_DQUOTE] = ACTIONS(85),
    [sym_date] = ACTIONS(76),
    [sym_number] = ACTIONS(88),
    [sym_comment] = ACTIONS(13),
  },
  [7] = {
    [sym__value] = STATE(7),
    [sym__amount] = STATE(7),
    [sym_quantity] = STATE(7),
    [sym_signed] = STATE(7),
    [sym_pair] = STATE(7),
    [sym_ratio] = STATE(7),
    [sym_plus_minus] = STATE(7),
    [sym_times] = STATE(7),
    [sym_parenthesis] = STATE(7),
    [sym_text] = STATE(7),
    [aux_sym_entry_repeat1] = STATE(7),
    [sym_word] = ACTIONS(91),
    [anon_sym_LF] = ACTIONS(68),
    [anon_sym_CR_LF] = ACTIONS(68),
    [anon_sym_CR] = ACTIONS(68),
    [anon_sym_SEMI] = ACTIONS(68),
    [anon_sym_LBRACE] = ACTIONS(68),
    [anon_sym_RBRACE] = ACTIONS(68),
    [anon_sym_PLUS] = ACTIONS(94),
    [anon_sym_DASH] = ACTIONS(94),
    [anon_sym_PLUS_SLASH_DASH] = ACTIONS(97),
    [anon_sym_u00b1] = ACTIONS(97),
    [sym_to] = ACTIONS(100),
    [anon_sym_x] = ACTIONS(103),
    [anon_sym_u00d7] = ACTIONS(103),
    [anon_sym_LPAREN] = ACTIONS(106),
    [anon_sym_DQUOTE] = ACTIONS(109),
    [sym_date] = ACTIONS(100),
    [sym_number] = ACTIONS(112),
    [sym_comment] = ACTIONS(13),
  },
};

static const uint16_t ts_small_parse_table[] = {
  [0] = 6,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(117), 1,
      anon_sym_SLASH,
    ACTIONS(119), 1,
      anon_sym_COLON,
    ACTIONS(121), 1,
      sym_unit,
    STATE(15), 1,
      aux_sym_ratio_repeat1,
    ACTIONS(115), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [36] = 7,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(123), 1,
      ts_builtin_sym_end,
    ACTIONS(125), 1,
      anon_sym_SLASH,
    ACTIONS(127), 1,
      anon_sym_COLON,
    ACTIONS(129), 1,
      sym_unit,
    STATE(12), 1,
      aux_sym_ratio_repeat1,
    ACTIONS(115), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [74] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(133), 1,
      anon_sym_SLASH,
    ACTIONS(135), 1,
      sym_unit,
    ACTIONS(131), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [104] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(137), 1,
      ts_builtin_sym_end,
    ACTIONS(139), 1,
      anon_sym_SLASH,
    ACTIONS(141), 1,
      sym_unit,
    ACTIONS(131), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [136] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(127), 1,
      anon_sym_COLON,
    ACTIONS(143), 1,
      ts_builtin_sym_end,
    STATE(13), 1,
      aux_sym_ratio_repeat1,
    ACTIONS(145), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [168] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(147), 1,
      ts_builtin_sym_end,
    ACTIONS(151), 1,
      anon_sym_COLON,
    STATE(13), 1,
      aux_sym_ratio_repeat1,
    ACTIONS(149), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [200] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(154), 1,
      ts_builtin_sym_end,
    ACTIONS(156), 19,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_STAR,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [228] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(119), 1,
      anon_sym_COLON,
    STATE(16), 1,
      aux_sym_ratio_repeat1,
    ACTIONS(145), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [258] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(158), 1,
      anon_sym_COLON,
    STATE(16), 1,
      aux_sym_ratio_repeat1,
    ACTIONS(149), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [288] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(156), 20,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_STAR,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [314] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(163), 1,
      sym_unit,
    ACTIONS(161), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [341] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(165), 1,
      ts_builtin_sym_end,
    ACTIONS(169), 1,
      sym_unit,
    ACTIONS(167), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [370] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(171), 1,
      ts_builtin_sym_end,
    ACTIONS(175), 1,
      sym_unit,
    ACTIONS(173), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [399] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(147), 1,
      ts_builtin_sym_end,
    ACTIONS(149), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_COLON,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [426] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(177), 1,
      ts_builtin_sym_end,
    ACTIONS(181), 1,
      sym_unit,
    ACTIONS(179), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [455] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(183), 1,
      sym_unit,
    ACTIONS(173), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [482] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(185), 1,
      sym_unit,
    ACTIONS(179), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [509] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(187), 1,
      sym_unit,
    ACTIONS(167), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [536] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(149), 19,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_COLON,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [561] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(189), 1,
      ts_builtin_sym_end,
    ACTIONS(191), 1,
      sym_unit,
    ACTIONS(161), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [590] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(193), 1,
      ts_builtin_sym_end,
    ACTIONS(195), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [616] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(197), 1,
      ts_builtin_sym_end,
    ACTIONS(199), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [642] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(165), 1,
      ts_builtin_sym_end,
    ACTIONS(167), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [668] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(201), 1,
      ts_builtin_sym_end,
    ACTIONS(203), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [694] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(177), 1,
      ts_builtin_sym_end,
    ACTIONS(179), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [720] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(205), 1,
      ts_builtin_sym_end,
    ACTIONS(207), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [746] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(209), 1,
      ts_builtin_sym_end,
    ACTIONS(211), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [772] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(211), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [796] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(213), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [820] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(215), 1,
      ts_builtin_sym_end,
    ACTIONS(213), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [846] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(217), 1,
      ts_builtin_sym_end,
    ACTIONS(219), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [872] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(219), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [896] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(221), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [920] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(195), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [944] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(223), 1,
      ts_builtin_sym_end,
    ACTIONS(221), 17,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [970] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(167), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [994] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(203), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [1018] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(179), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [1042] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(207), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [1066] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(199), 18,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_LBRACE,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_PLUS_SLASH_DASH,
      anon_sym_u00b1,
      sym_to,
      anon_sym_x,
      anon_sym_u00d7,
      anon_sym_LPAREN,
      anon_sym_DQUOTE,
      sym_date,
      sym_number,
      sym_word,
  [1090] = 8,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(231), 1,
      anon_sym_RBRACE,
    STATE(94), 1,
      aux_sym_source_file_repeat2,
    STATE(79), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    STATE(111), 3,
      sym__statement,
      sym_let,
      sym_entry,
    ACTIONS(227), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1121] = 8,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(235), 1,
      anon_sym_RBRACE,
    STATE(109), 1,
      aux_sym_source_file_repeat2,
    STATE(48), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    STATE(107), 3,
      sym__statement,
      sym_let,
      sym_entry,
    ACTIONS(233), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1152] = 8,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(239), 1,
      anon_sym_RBRACE,
    STATE(97), 1,
      aux_sym_source_file_repeat2,
    STATE(51), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    STATE(96), 3,
      sym__statement,
      sym_let,
      sym_entry,
    ACTIONS(237), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1183] = 8,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(241), 1,
      anon_sym_RBRACE,
    STATE(108), 1,
      aux_sym_source_file_repeat2,
    STATE(79), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    STATE(106), 3,
      sym__statement,
      sym_let,
      sym_entry,
    ACTIONS(227), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1214] = 8,
    ACTIONS(7), 1,
      sym_word,
    ACTIONS(11), 1,
      anon_sym_let,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(243), 1,
      ts_builtin_sym_end,
    STATE(105), 1,
      aux_sym_source_file_repeat2,
    STATE(88), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    STATE(102), 3,
      sym__statement,
      sym_let,
      sym_entry,
    ACTIONS(245), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1245] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(247), 1,
      ts_builtin_sym_end,
    ACTIONS(251), 1,
      sym_number,
    STATE(53), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    ACTIONS(249), 8,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1269] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(256), 1,
      sym_number,
    STATE(55), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    ACTIONS(254), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1291] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(258), 1,
      sym_number,
    STATE(55), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    ACTIONS(249), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1313] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(261), 1,
      ts_builtin_sym_end,
    ACTIONS(263), 1,
      sym_number,
    STATE(53), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    ACTIONS(254), 8,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1337] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(265), 1,
      sym_word,
    ACTIONS(267), 1,
      anon_sym_DASH,
    ACTIONS(269), 1,
      anon_sym_LPAREN,
    ACTIONS(271), 1,
      sym_number,
    STATE(56), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(85), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1364] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(121), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1391] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(138), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1418] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(123), 1,
      ts_builtin_sym_end,
    ACTIONS(281), 1,
      sym_unit,
    ACTIONS(115), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
      sym_number,
  [1439] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(283), 1,
      sym_unit,
    ACTIONS(115), 10,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
      sym_number,
  [1458] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(265), 1,
      sym_word,
    ACTIONS(267), 1,
      anon_sym_DASH,
    ACTIONS(269), 1,
      anon_sym_LPAREN,
    ACTIONS(271), 1,
      sym_number,
    STATE(56), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(91), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1485] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(285), 1,
      sym_word,
    ACTIONS(287), 1,
      anon_sym_DASH,
    ACTIONS(289), 1,
      anon_sym_LPAREN,
    ACTIONS(291), 1,
      sym_number,
    STATE(54), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(82), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1512] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(285), 1,
      sym_word,
    ACTIONS(287), 1,
      anon_sym_DASH,
    ACTIONS(289), 1,
      anon_sym_LPAREN,
    ACTIONS(291), 1,
      sym_number,
    STATE(54), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(83), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1539] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(265), 1,
      sym_word,
    ACTIONS(267), 1,
      anon_sym_DASH,
    ACTIONS(269), 1,
      anon_sym_LPAREN,
    ACTIONS(271), 1,
      sym_number,
    STATE(56), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(78), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1566] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(126), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1593] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(285), 1,
      sym_word,
    ACTIONS(287), 1,
      anon_sym_DASH,
    ACTIONS(289), 1,
      anon_sym_LPAREN,
    ACTIONS(291), 1,
      sym_number,
    STATE(54), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(81), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1620] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(130), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1647] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(134), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1674] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(135), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1701] = 7,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(275), 1,
      anon_sym_DASH,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(136), 5,
      sym_parenthesis,
      sym__expression,
      sym_binary,
      sym_negation,
      sym__operand,
  [1728] = 5,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(295), 1,
      anon_sym_LPAREN,
    ACTIONS(297), 1,
      sym_number,
    ACTIONS(293), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    STATE(39), 6,
      sym__amount,
      sym_quantity,
      sym_signed,
      sym_pair,
      sym_ratio,
      sym_parenthesis,
  [1750] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(189), 1,
      ts_builtin_sym_end,
    ACTIONS(191), 1,
      sym_unit,
    ACTIONS(161), 8,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1770] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(199), 10,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
      sym_number,
  [1786] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(163), 1,
      sym_unit,
    ACTIONS(161), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1804] = 5,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(301), 1,
      anon_sym_LPAREN,
    ACTIONS(303), 1,
      sym_number,
    ACTIONS(299), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    STATE(38), 6,
      sym__amount,
      sym_quantity,
      sym_signed,
      sym_pair,
      sym_ratio,
      sym_parenthesis,
  [1826] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(197), 1,
      ts_builtin_sym_end,
    ACTIONS(199), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
      sym_number,
  [1844] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(305), 1,
      ts_builtin_sym_end,
    ACTIONS(307), 8,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1861] = 4,
    ACTIONS(13), 1,
      sym_comment,
    STATE(79), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(309), 3,
      anon_sym_let,
      anon_sym_RBRACE,
      sym_word,
    ACTIONS(311), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1880] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(314), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1895] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(318), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(320), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
    ACTIONS(316), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [1914] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(320), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
    ACTIONS(307), 7,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
  [1931] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(307), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1946] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(322), 1,
      ts_builtin_sym_end,
    ACTIONS(324), 8,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1963] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(326), 1,
      ts_builtin_sym_end,
    ACTIONS(328), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(330), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
    ACTIONS(316), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [1984] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(324), 9,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [1999] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(332), 1,
      ts_builtin_sym_end,
    ACTIONS(314), 8,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_STAR,
  [2016] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(334), 1,
      ts_builtin_sym_end,
    ACTIONS(309), 2,
      anon_sym_let,
      sym_word,
    STATE(88), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(336), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2037] = 5,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(339), 1,
      ts_builtin_sym_end,
    ACTIONS(341), 2,
      anon_sym_let,
      sym_word,
    STATE(88), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(245), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2058] = 4,
    ACTIONS(13), 1,
      sym_comment,
    STATE(79), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(341), 3,
      anon_sym_let,
      anon_sym_RBRACE,
      sym_word,
    ACTIONS(227), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2077] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(305), 1,
      ts_builtin_sym_end,
    ACTIONS(330), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
    ACTIONS(307), 6,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_PLUS,
      anon_sym_DASH,
  [2096] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(343), 1,
      sym_number,
    STATE(92), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    ACTIONS(247), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2114] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(279), 1,
      sym_number,
    STATE(92), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    ACTIONS(261), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2132] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(346), 1,
      anon_sym_RBRACE,
    STATE(104), 1,
      aux_sym_source_file_repeat2,
    STATE(112), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2153] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(7), 1,
      sym_word,
    ACTIONS(11), 1,
      anon_sym_let,
    ACTIONS(243), 1,
      ts_builtin_sym_end,
    STATE(114), 1,
      aux_sym_source_file_repeat2,
    STATE(102), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2174] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(241), 1,
      anon_sym_RBRACE,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2191] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(350), 1,
      anon_sym_RBRACE,
    STATE(104), 1,
      aux_sym_source_file_repeat2,
    STATE(106), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2212] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(273), 1,
      sym_word,
    ACTIONS(277), 1,
      anon_sym_LPAREN,
    ACTIONS(279), 1,
      sym_number,
    STATE(93), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(120), 2,
      sym_parenthesis,
      sym__operand,
  [2233] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(352), 1,
      anon_sym_RBRACE,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2250] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(354), 1,
      sym_unit,
    ACTIONS(123), 6,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
      sym_number,
  [2265] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(243), 1,
      ts_builtin_sym_end,
    STATE(89), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(356), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2282] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(358), 1,
      ts_builtin_sym_end,
    STATE(89), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(356), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2299] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(360), 1,
      ts_builtin_sym_end,
    STATE(89), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(356), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2316] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(339), 1,
      anon_sym_RBRACE,
    ACTIONS(362), 1,
      sym_word,
    ACTIONS(365), 1,
      anon_sym_let,
    STATE(104), 1,
      aux_sym_source_file_repeat2,
    STATE(116), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2337] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(7), 1,
      sym_word,
    ACTIONS(11), 1,
      anon_sym_let,
    ACTIONS(358), 1,
      ts_builtin_sym_end,
    STATE(114), 1,
      aux_sym_source_file_repeat2,
    STATE(103), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2358] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(368), 1,
      anon_sym_RBRACE,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2375] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(231), 1,
      anon_sym_RBRACE,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2392] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(370), 1,
      anon_sym_RBRACE,
    STATE(104), 1,
      aux_sym_source_file_repeat2,
    STATE(99), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2413] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(225), 1,
      sym_word,
    ACTIONS(229), 1,
      anon_sym_let,
    ACTIONS(372), 1,
      anon_sym_RBRACE,
    STATE(104), 1,
      aux_sym_source_file_repeat2,
    STATE(111), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2434] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(265), 1,
      sym_word,
    ACTIONS(269), 1,
      anon_sym_LPAREN,
    ACTIONS(271), 1,
      sym_number,
    STATE(56), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(87), 2,
      sym_parenthesis,
      sym__operand,
  [2455] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(374), 1,
      anon_sym_RBRACE,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2472] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(376), 1,
      anon_sym_RBRACE,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2489] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(285), 1,
      sym_word,
    ACTIONS(289), 1,
      anon_sym_LPAREN,
    ACTIONS(291), 1,
      sym_number,
    STATE(54), 2,
      sym_quantity,
      aux_sym__operand_repeat1,
    STATE(80), 2,
      sym_parenthesis,
      sym__operand,
  [2510] = 6,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(339), 1,
      ts_builtin_sym_end,
    ACTIONS(362), 1,
      sym_word,
    ACTIONS(365), 1,
      anon_sym_let,
    STATE(114), 1,
      aux_sym_source_file_repeat2,
    STATE(118), 3,
      sym__statement,
      sym_let,
      sym_entry,
  [2531] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(197), 6,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
      sym_number,
  [2543] = 3,
    ACTIONS(13), 1,
      sym_comment,
    STATE(90), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(348), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2557] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(378), 1,
      sym_unit,
    ACTIONS(189), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2571] = 3,
    ACTIONS(13), 1,
      sym_comment,
    STATE(89), 2,
      sym__separator,
      aux_sym_source_file_repeat1,
    ACTIONS(356), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2585] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(380), 1,
      ts_builtin_sym_end,
    ACTIONS(382), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2598] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(332), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2609] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(388), 1,
      anon_sym_RPAREN,
    ACTIONS(384), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(386), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
  [2624] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(390), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [2635] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(392), 1,
      ts_builtin_sym_end,
    ACTIONS(394), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2648] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(396), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [2659] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(398), 1,
      ts_builtin_sym_end,
    ACTIONS(400), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2672] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(305), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2683] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(382), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [2694] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(402), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [2705] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(322), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2716] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(404), 1,
      anon_sym_RPAREN,
    ACTIONS(384), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(386), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
  [2731] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(154), 5,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_SLASH,
      anon_sym_RPAREN,
      anon_sym_STAR,
  [2742] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(406), 1,
      ts_builtin_sym_end,
    ACTIONS(396), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2755] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(400), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [2766] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(408), 1,
      anon_sym_RPAREN,
    ACTIONS(384), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(386), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
  [2781] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(410), 1,
      anon_sym_RPAREN,
    ACTIONS(384), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(386), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
  [2796] = 4,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(412), 1,
      anon_sym_RPAREN,
    ACTIONS(384), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
    ACTIONS(386), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
  [2811] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(414), 1,
      ts_builtin_sym_end,
    ACTIONS(390), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2824] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(386), 2,
      anon_sym_SLASH,
      anon_sym_STAR,
    ACTIONS(305), 3,
      anon_sym_PLUS,
      anon_sym_DASH,
      anon_sym_RPAREN,
  [2837] = 2,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(394), 5,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
      anon_sym_RBRACE,
  [2848] = 3,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(416), 1,
      ts_builtin_sym_end,
    ACTIONS(402), 4,
      anon_sym_LF,
      anon_sym_CR_LF,
      anon_sym_CR,
      anon_sym_SEMI,
  [2861] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(418), 1,
      anon_sym_DQUOTE2,
    STATE(143), 1,
      aux_sym_text_repeat1,
    ACTIONS(420), 2,
      sym__text_content,
      sym_escape,
  [2875] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(422), 1,
      anon_sym_DQUOTE2,
    STATE(143), 1,
      aux_sym_text_repeat1,
    ACTIONS(420), 2,
      sym__text_content,
      sym_escape,
  [2889] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(424), 1,
      anon_sym_DQUOTE2,
    STATE(143), 1,
      aux_sym_text_repeat1,
    ACTIONS(426), 2,
      sym__text_content,
      sym_escape,
  [2903] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(429), 1,
      anon_sym_DQUOTE2,
    STATE(141), 1,
      aux_sym_text_repeat1,
    ACTIONS(431), 2,
      sym__text_content,
      sym_escape,
  [2917] = 4,
    ACTIONS(13), 1,
      sym_comment,
    ACTIONS(433), 1,
      anon_sym_DQUOTE2,
    STATE(142), 1,
      aux_sym_text_repeat1,
    ACTIONS(435), 2,
      sym__text_content,
      sym_escape,
  [2931] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(439), 1,
      sym_number,
    ACTIONS(437), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
  [2942] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(443), 1,
      sym_number,
    ACTIONS(441), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
  [2953] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(447), 1,
      sym_number,
    ACTIONS(445), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
  [2964] = 3,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(451), 1,
      sym_number,
    ACTIONS(449), 2,
      anon_sym_PLUS,
      anon_sym_DASH,
  [2975] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(453), 1,
      anon_sym_EQ,
  [2982] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(455), 1,
      sym_number,
  [2989] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(457), 1,
      sym_number,
  [2996] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(459), 1,
      sym_number,
  [3003] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(443), 1,
      sym_number,
  [3010] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(461), 1,
      ts_builtin_sym_end,
  [3017] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(463), 1,
      sym_number,
  [3024] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(465), 1,
      sym_number,
  [3031] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(467), 1,
      anon_sym_EQ,
  [3038] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(469), 1,
      sym_number,
  [3045] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(471), 1,
      sym_word,
  [3052] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(447), 1,
      sym_number,
  [3059] = 2,
    ACTIONS(3), 1,
      sym_comment,
    ACTIONS(473), 1,
      sym_word,
};

static const uint32_t ts_small_parse_table_map[] = {
  [SMALL_STATE(8)] = 0,
  [SMALL_STATE(9)] = 36,
  [SMALL_STATE(10)] = 74,
  [SMALL_STATE(11)] = 104,
  [SMALL_STATE(12)] = 136,
  [SMALL_STATE(13)] = 168,
  [SMALL_STATE(14)] = 200,
  [SMALL_STATE(15)] = 228,
  [SMALL_STATE(16)] = 258,
  [SMALL_STATE(17)] = 288,
  [SMALL_STATE(18)] = 314,
  [SMALL_STATE(19)] = 341,
  [SMALL_STATE(20)] = 370,
  [SMALL_STATE(21)] = 399,
  [SMALL_STATE(22)] = 426,
  [SMALL_STATE(23)] = 455,
  [SMALL_STATE(24)] = 482,
  [SMALL_STATE(25)] = 509,
  [SMALL_STATE(26)] = 536,
  [SMALL_STATE(27)] = 561,
  [SMALL_STATE(28)] = 590,
  [SMALL_STATE(29)] = 616,
  [SMALL_STATE(30)] = 642,
  [SMALL_STATE(31)] = 668,
  [SMALL_STATE(32)] = 694,
  [SMALL_STATE(33)] = 720,
  [SMALL_STATE(34)] = 746,
  [SMALL_STATE(35)] = 772,
  [SMALL_STATE(36)] = 796,
  [SMALL_STATE(37)] = 820,
  [SMALL_STATE(38)] = 846,
  [SMALL_STATE(39)] = 872,
  [SMALL_STATE(40)] = 896,
  [SMALL_STATE(41)] = 920,
  [SMALL_STATE(42)] = 944,
  [SMALL_STATE(43)] = 970,
  [SMALL_STATE(44)] = 994,
  [SMALL_STATE(45)] = 1018,
  [SMALL_STATE(46)] = 1042,
  [SMALL_STATE(47)] = 1066,
  [SMALL_STATE(48)] = 1090,
  [SMALL_STATE(49)] = 1121,
  [SMALL_STATE(50)] = 1152,
  [SMALL_STATE(51)] = 1183,
  [SMALL_STATE(52)] = 1214,
  [SMALL_STATE(53)] = 1245,
  [SMALL_STATE(54)] = 1269,
  [SMALL_STATE(55)] = 1291,
  [SMALL_STATE(56)] = 1313,
  [SMALL_STATE(57)] = 1337,
  [SMALL_STATE(58)] = 1364,
  [SMALL_STATE(59)] = 1391,
  [SMALL_STATE(60)] = 1418,
  [SMALL_STATE(61)] = 1439,
  [SMALL_STATE(62)] = 1458,
  [SMALL_STATE(63)] = 1485,
  [SMALL_STATE(64)] = 1512,
  [SMALL_STATE(65)] = 1539,
  [SMALL_STATE(66)] = 1566,
  [SMALL_STATE(67)] = 1593,
  [SMALL_STATE(68)] = 1620,
  [SMALL_STATE(69)] = 1647,
  [SMALL_STATE(70)] = 1674,
  [SMALL_STATE(71)] = 1701,
  [SMALL_STATE(72)] = 1728,
  [SMALL_STATE(73)] = 1750,
  [SMALL_STATE(74)] = 1770,
  [SMALL_STATE(75)] = 1786,
  [SMALL_STATE(76)] = 1804,
  [SMALL_STATE(77)] = 1826,
  [SMALL_STATE(78)] = 1844,
  [SMALL_STATE(79)] = 1861,
  [SMALL_STATE(80)] = 1880,
  [SMALL_STATE(81)] = 1895,
  [SMALL_STATE(82)] = 1914,
  [SMALL_STATE(83)] = 1931,
  [SMALL_STATE(84)] = 1946,
  [SMALL_STATE(85)] = 1963,
  [SMALL_STATE(86)] = 1984,
  [SMALL_STATE(87)] = 1999,
  [SMALL_STATE(88)] = 2016,
  [SMALL_STATE(89)] = 2037,
  [SMALL_STATE(90)] = 2058,
  [SMALL_STATE(91)] = 2077,
  [SMALL_STATE(92)] = 2096,
  [SMALL_STATE(93)] = 2114,
  [SMALL_STATE(94)] = 2132,
  [SMALL_STATE(95)] = 2153,
  [SMALL_STATE(96)] = 2174,
  [SMALL_STATE(97)] = 2191,
  [SMALL_STATE(98)] = 2212,
  [SMALL_STATE(99)] = 2233,
  [SMALL_STATE(100)] = 2250,
  [SMALL_STATE(101)] = 2265,
  [SMALL_STATE(102)] = 2282,
  [SMALL_STATE(103)] = 2299,
  [SMALL_STATE(104)] = 2316,
  [SMALL_STATE(105)] = 2337,
  [SMALL_STATE(106)] = 2358,
  [SMALL_STATE(107)] = 2375,
  [SMALL_STATE(108)] = 2392,
  [SMALL_STATE(109)] = 2413,
  [SMALL_STATE(110)] = 2434,
  [SMALL_STATE(111)] = 2455,
  [SMALL_STATE(112)] = 2472,
  [SMALL_STATE(113)] = 2489,
  [SMALL_STATE(114)] = 2510,
  [SMALL_STATE(115)] = 2531,
  [SMALL_STATE(116)] = 2543,
  [SMALL_STATE(117)] = 2557,
  [SMALL_STATE(118)] = 2571,
  [SMALL_STATE(119)] = 2585,
  [SMALL_STATE(120)] = 2598,
  [SMALL_STATE(121)] = 2609,
  [SMALL_STATE(122)] = 2624,
  [SMALL_STATE(123)] = 2635,
  [SMALL_STATE(124)] = 2648,
  [SMALL_STATE(125)] = 2659,
  [SMALL_STATE(126)] = 2672,
  [SMALL_STATE(127)] = 2683,
  [SMALL_STATE(128)] = 2694,
  [SMALL_STATE(129)] = 2705,
  [SMALL_STATE(130)] = 2716,
  [SMALL_STATE(131)] = 2731,
  [SMALL_STATE(132)] = 2742,
  [SMALL_STATE(133)] = 2755,
  [SMALL_STATE(134)] = 2766,
  [SMALL_STATE(135)] = 2781,
  [SMALL_STATE(136)] = 2796,
  [SMALL_STATE(137)] = 2811,
  [SMALL_STATE(138)] = 2824,
  [SMALL_STATE(139)] = 2837,
  [SMALL_STATE(140)] = 2848,
  [SMALL_STATE(141)] = 2861,
  [SMALL_STATE(142)] = 2875,
  [SMALL_STATE(143)] = 2889,
  [SMALL_STATE(144)] = 2903,
  [SMALL_STATE(145)] = 2917,
  [SMALL_STATE(146)] = 2931,
  [SMALL_STATE(147)] = 2942,
  [SMALL_STATE(148)] = 2953,
  [SMALL_STATE(149)] = 2964,
  [SMALL_STATE(150)] = 2975,
  [SMALL_STATE(151)] = 2982,
  [SMALL_STATE(152)] = 2989,
  [SMALL_STATE(153)] = 2996,
  [SMALL_STATE(154)] = 3003,
  [SMALL_STATE(155)] = 3010,
  [SMALL_STATE(156)] = 3017,
  [SMALL_STATE(157)] = 3024,
  [SMALL_STATE(158)] = 3031,
  [SMALL_STATE(159)] = 3038,
  [SMALL_STATE(160)] = 3045,
  [SMALL_STATE(161)] = 3052,
  [SMALL_STATE(162)] = 3059,
};

static const TSParseActionEntry ts_parse_actions[] = {
  [0] = {.entry = {.count = 0, .reusable = false}},
  [1] = {.entry = {.count = 1, .reusable = false}}, RECOVER(),
  [3] = {.entry = {.count = 1, .reusable = true}}, SHIFT_EXTRA(),
  [5] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 0, 0, 0),
  [7] = {.entry = {.count = 1, .reusable = false}}, SHIFT(2),
  [9] = {.entry = {.count = 1, .reusable = false}}, SHIFT(52),
  [11] = {.entry = {.count = 1, .reusable = false}}, SHIFT(160),
  [13] = {.entry = {.count = 1, .reusable = false}}, SHIFT_EXTRA(),
  [15] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_entry, 1, 0, 1),
  [17] = {.entry = {.count = 1, .reusable = false}}, SHIFT(37),
  [19] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_entry, 1, 0, 1),
  [21] = {.entry = {.count = 1, .reusable = false}}, SHIFT(50),
  [23] = {.entry = {.count = 1, .reusable = false}}, SHIFT(153),
  [25] = {.entry = {.count = 1, .reusable = false}}, SHIFT(76),
  [27] = {.entry = {.count = 1, .reusable = false}}, SHIFT(3),
  [29] = {.entry = {.count = 1, .reusable = false}}, SHIFT(34),
  [31] = {.entry = {.count = 1, .reusable = false}}, SHIFT(58),
  [33] = {.entry = {.count = 1, .reusable = false}}, SHIFT(145),
  [35] = {.entry = {.count = 1, .reusable = false}}, SHIFT(9),
  [37] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_entry, 2, 0, 1),
  [39] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_entry, 2, 0, 1),
  [41] = {.entry = {.count = 1, .reusable = false}}, SHIFT(6),
  [43] = {.entry = {.count = 1, .reusable = false}}, SHIFT(36),
  [45] = {.entry = {.count = 1, .reusable = false}}, SHIFT(49),
  [47] = {.entry = {.count = 1, .reusable = false}}, SHIFT(157),
  [49] = {.entry = {.count = 1, .reusable = false}}, SHIFT(72),
  [51] = {.entry = {.count = 1, .reusable = false}}, SHIFT(7),
  [53] = {.entry = {.count = 1, .reusable = false}}, SHIFT(35),
  [55] = {.entry = {.count = 1, .reusable = false}}, SHIFT(70),
  [57] = {.entry = {.count = 1, .reusable = false}}, SHIFT(144),
  [59] = {.entry = {.count = 1, .reusable = false}}, SHIFT(8),
  [61] = {.entry = {.count = 1, .reusable = false}}, SHIFT(4),
  [63] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0),
  [65] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(37),
  [68] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0),
  [70] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(153),
  [73] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(76),
  [76] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(6),
  [79] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(34),
  [82] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(58),
  [85] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(145),
  [88] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(9),
  [91] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(36),
  [94] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(157),
  [97] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(72),
  [100] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(7),
  [103] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(35),
  [106] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(70),
  [109] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(144),
  [112] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_entry_repeat1, 2, 0, 0), SHIFT_REPEAT(8),
  [115] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 1, 0, 0),
  [117] = {.entry = {.count = 1, .reusable = false}}, SHIFT(146),
  [119] = {.entry = {.count = 1, .reusable = false}}, SHIFT(151),
  [121] = {.entry = {.count = 1, .reusable = false}}, SHIFT(47),
  [123] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 1, 0, 0),
  [125] = {.entry = {.count = 1, .reusable = false}}, SHIFT(149),
  [127] = {.entry = {.count = 1, .reusable = false}}, SHIFT(159),
  [129] = {.entry = {.count = 1, .reusable = false}}, SHIFT(29),
  [131] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_signed, 2, 0, 0),
  [133] = {.entry = {.count = 1, .reusable = false}}, SHIFT(147),
  [135] = {.entry = {.count = 1, .reusable = false}}, SHIFT(40),
  [137] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_signed, 2, 0, 0),
  [139] = {.entry = {.count = 1, .reusable = false}}, SHIFT(148),
  [141] = {.entry = {.count = 1, .reusable = false}}, SHIFT(42),
  [143] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_ratio, 2, 0, 0),
  [145] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_ratio, 2, 0, 0),
  [147] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_ratio_repeat1, 2, 0, 0),
  [149] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym_ratio_repeat1, 2, 0, 0),
  [151] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_ratio_repeat1, 2, 0, 0), SHIFT_REPEAT(159),
  [154] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_parenthesis, 4, 0, 0),
  [156] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_parenthesis, 4, 0, 0),
  [158] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_ratio_repeat1, 2, 0, 0), SHIFT_REPEAT(151),
  [161] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_parenthesis, 3, 0, 0),
  [163] = {.entry = {.count = 1, .reusable = false}}, SHIFT(17),
  [165] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pair, 4, 0, 0),
  [167] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_pair, 4, 0, 0),
  [169] = {.entry = {.count = 1, .reusable = false}}, SHIFT(32),
  [171] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pair, 3, 0, 0),
  [173] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_pair, 3, 0, 0),
  [175] = {.entry = {.count = 1, .reusable = false}}, SHIFT(30),
  [177] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pair, 5, 0, 0),
  [179] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_pair, 5, 0, 0),
  [181] = {.entry = {.count = 1, .reusable = false}}, SHIFT(33),
  [183] = {.entry = {.count = 1, .reusable = false}}, SHIFT(43),
  [185] = {.entry = {.count = 1, .reusable = false}}, SHIFT(46),
  [187] = {.entry = {.count = 1, .reusable = false}}, SHIFT(45),
  [189] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_parenthesis, 3, 0, 0),
  [191] = {.entry = {.count = 1, .reusable = false}}, SHIFT(14),
  [193] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_text, 3, 0, 0),
  [195] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_text, 3, 0, 0),
  [197] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_quantity, 2, 0, 0),
  [199] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_quantity, 2, 0, 0),
  [201] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_text, 2, 0, 0),
  [203] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_text, 2, 0, 0),
  [205] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_pair, 6, 0, 0),
  [207] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_pair, 6, 0, 0),
  [209] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_times, 1, 0, 0),
  [211] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_times, 1, 0, 0),
  [213] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__value, 1, 0, 2),
  [215] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__value, 1, 0, 2),
  [217] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_plus_minus, 2, 0, 0),
  [219] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_plus_minus, 2, 0, 0),
  [221] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_signed, 3, 0, 0),
  [223] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_signed, 3, 0, 0),
  [225] = {.entry = {.count = 1, .reusable = false}}, SHIFT(5),
  [227] = {.entry = {.count = 1, .reusable = false}}, SHIFT(79),
  [229] = {.entry = {.count = 1, .reusable = false}}, SHIFT(162),
  [231] = {.entry = {.count = 1, .reusable = false}}, SHIFT(127),
  [233] = {.entry = {.count = 1, .reusable = false}}, SHIFT(48),
  [235] = {.entry = {.count = 1, .reusable = false}}, SHIFT(124),
  [237] = {.entry = {.count = 1, .reusable = false}}, SHIFT(51),
  [239] = {.entry = {.count = 1, .reusable = false}}, SHIFT(132),
  [241] = {.entry = {.count = 1, .reusable = false}}, SHIFT(119),
  [243] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 1, 0, 0),
  [245] = {.entry = {.count = 1, .reusable = false}}, SHIFT(88),
  [247] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym__operand_repeat1, 2, 0, 0),
  [249] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym__operand_repeat1, 2, 0, 0),
  [251] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__operand_repeat1, 2, 0, 0), SHIFT_REPEAT(60),
  [254] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__operand, 1, 0, 0),
  [256] = {.entry = {.count = 1, .reusable = false}}, SHIFT(61),
  [258] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym__operand_repeat1, 2, 0, 0), SHIFT_REPEAT(61),
  [261] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__operand, 1, 0, 0),
  [263] = {.entry = {.count = 1, .reusable = false}}, SHIFT(60),
  [265] = {.entry = {.count = 1, .reusable = true}}, SHIFT(84),
  [267] = {.entry = {.count = 1, .reusable = true}}, SHIFT(110),
  [269] = {.entry = {.count = 1, .reusable = true}}, SHIFT(69),
  [271] = {.entry = {.count = 1, .reusable = true}}, SHIFT(60),
  [273] = {.entry = {.count = 1, .reusable = true}}, SHIFT(129),
  [275] = {.entry = {.count = 1, .reusable = true}}, SHIFT(98),
  [277] = {.entry = {.count = 1, .reusable = true}}, SHIFT(68),
  [279] = {.entry = {.count = 1, .reusable = true}}, SHIFT(100),
  [281] = {.entry = {.count = 1, .reusable = false}}, SHIFT(77),
  [283] = {.entry = {.count = 1, .reusable = false}}, SHIFT(74),
  [285] = {.entry = {.count = 1, .reusable = true}}, SHIFT(86),
  [287] = {.entry = {.count = 1, .reusable = true}}, SHIFT(113),
  [289] = {.entry = {.count = 1, .reusable = true}}, SHIFT(71),
  [291] = {.entry = {.count = 1, .reusable = true}}, SHIFT(61),
  [293] = {.entry = {.count = 1, .reusable = true}}, SHIFT(157),
  [295] = {.entry = {.count = 1, .reusable = true}}, SHIFT(70),
  [297] = {.entry = {.count = 1, .reusable = true}}, SHIFT(8),
  [299] = {.entry = {.count = 1, .reusable = true}}, SHIFT(153),
  [301] = {.entry = {.count = 1, .reusable = true}}, SHIFT(58),
  [303] = {.entry = {.count = 1, .reusable = true}}, SHIFT(9),
  [305] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_binary, 3, 0, 6),
  [307] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_binary, 3, 0, 6),
  [309] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0),
  [311] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(79),
  [314] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_negation, 2, 0, 0),
  [316] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_let, 4, 0, 5),
  [318] = {.entry = {.count = 1, .reusable = false}}, SHIFT(63),
  [320] = {.entry = {.count = 1, .reusable = false}}, SHIFT(64),
  [322] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym__operand, 1, 0, 2),
  [324] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym__operand, 1, 0, 2),
  [326] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_let, 4, 0, 5),
  [328] = {.entry = {.count = 1, .reusable = false}}, SHIFT(62),
  [330] = {.entry = {.count = 1, .reusable = false}}, SHIFT(65),
  [332] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_negation, 2, 0, 0),
  [334] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0),
  [336] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat1, 2, 0, 0), SHIFT_REPEAT(88),
  [339] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_source_file_repeat2, 2, 0, 0),
  [341] = {.entry = {.count = 1, .reusable = false}}, REDUCE(aux_sym_source_file_repeat2, 2, 0, 0),
  [343] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym__operand_repeat1, 2, 0, 0), SHIFT_REPEAT(100),
  [346] = {.entry = {.count = 1, .reusable = true}}, SHIFT(128),
  [348] = {.entry = {.count = 1, .reusable = false}}, SHIFT(90),
  [350] = {.entry = {.count = 1, .reusable = true}}, SHIFT(119),
  [352] = {.entry = {.count = 1, .reusable = false}}, SHIFT(125),
  [354] = {.entry = {.count = 1, .reusable = true}}, SHIFT(115),
  [356] = {.entry = {.count = 1, .reusable = false}}, SHIFT(89),
  [358] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 2, 0, 0),
  [360] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_source_file, 3, 0, 0),
  [362] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat2, 2, 0, 0), SHIFT_REPEAT(5),
  [365] = {.entry = {.count = 2, .reusable = false}}, REDUCE(aux_sym_source_file_repeat2, 2, 0, 0), SHIFT_REPEAT(162),
  [368] = {.entry = {.count = 1, .reusable = false}}, SHIFT(140),
  [370] = {.entry = {.count = 1, .reusable = true}}, SHIFT(140),
  [372] = {.entry = {.count = 1, .reusable = true}}, SHIFT(127),
  [374] = {.entry = {.count = 1, .reusable = false}}, SHIFT(128),
  [376] = {.entry = {.count = 1, .reusable = false}}, SHIFT(133),
  [378] = {.entry = {.count = 1, .reusable = true}}, SHIFT(131),
  [380] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 3, 0, 0),
  [382] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 3, 0, 0),
  [384] = {.entry = {.count = 1, .reusable = true}}, SHIFT(59),
  [386] = {.entry = {.count = 1, .reusable = true}}, SHIFT(66),
  [388] = {.entry = {.count = 1, .reusable = true}}, SHIFT(27),
  [390] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_entry, 2, 0, 3),
  [392] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_entry, 3, 0, 4),
  [394] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_entry, 3, 0, 4),
  [396] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 2, 0, 0),
  [398] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 5, 0, 0),
  [400] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 5, 0, 0),
  [402] = {.entry = {.count = 1, .reusable = false}}, REDUCE(sym_block, 4, 0, 0),
  [404] = {.entry = {.count = 1, .reusable = true}}, SHIFT(117),
  [406] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 2, 0, 0),
  [408] = {.entry = {.count = 1, .reusable = true}}, SHIFT(73),
  [410] = {.entry = {.count = 1, .reusable = true}}, SHIFT(18),
  [412] = {.entry = {.count = 1, .reusable = true}}, SHIFT(75),
  [414] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_entry, 2, 0, 3),
  [416] = {.entry = {.count = 1, .reusable = true}}, REDUCE(sym_block, 4, 0, 0),
  [418] = {.entry = {.count = 1, .reusable = true}}, SHIFT(41),
  [420] = {.entry = {.count = 1, .reusable = true}}, SHIFT(143),
  [422] = {.entry = {.count = 1, .reusable = true}}, SHIFT(28),
  [424] = {.entry = {.count = 1, .reusable = true}}, REDUCE(aux_sym_text_repeat1, 2, 0, 0),
  [426] = {.entry = {.count = 2, .reusable = true}}, REDUCE(aux_sym_text_repeat1, 2, 0, 0), SHIFT_REPEAT(143),
  [429] = {.entry = {.count = 1, .reusable = true}}, SHIFT(44),
  [431] = {.entry = {.count = 1, .reusable = true}}, SHIFT(141),
  [433] = {.entry = {.count = 1, .reusable = true}}, SHIFT(31),
  [435] = {.entry = {.count = 1, .reusable = true}}, SHIFT(142),
  [437] = {.entry = {.count = 1, .reusable = true}}, SHIFT(154),
  [439] = {.entry = {.count = 1, .reusable = true}}, SHIFT(23),
  [441] = {.entry = {.count = 1, .reusable = true}}, SHIFT(156),
  [443] = {.entry = {.count = 1, .reusable = true}}, SHIFT(25),
  [445] = {.entry = {.count = 1, .reusable = true}}, SHIFT(152),
  [447] = {.entry = {.count = 1, .reusable = true}}, SHIFT(19),
  [449] = {.entry = {.count = 1, .reusable = true}}, SHIFT(161),
  [451] = {.entry = {.count = 1, .reusable = true}}, SHIFT(20),
  [453] = {.entry = {.count = 1, .reusable = true}}, SHIFT(57),
  [455] = {.entry = {.count = 1, .reusable = true}}, SHIFT(26),
  [457] = {.entry = {.count = 1, .reusable = true}}, SHIFT(22),
  [459] = {.entry = {.count = 1, .reusable = true}}, SHIFT(11),
  [461] = {.entry = {.count = 1, .reusable = true}},  ACCEPT_INPUT(),
  [463] = {.entry = {.count = 1, .reusable = true}}, SHIFT(24),
  [465] = {.entry = {.count = 1, .reusable = true}}, SHIFT(10),
  [467] = {.entry = {.count = 1, .reusable = true}}, SHIFT(67),
  [469] = {.entry = {.count = 1, .reusable = true}}, SHIFT(21),
  [471] = {.entry = {.count = 1, .reusable = true}}, SHIFT(150),
  [473] = {.entry = {.count = 1, .reusable = true}}, SHIFT(158),
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

TS_PUBLIC const TSLanguage *tree_sitter_recipe(void) {
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
    .field_names = ts_field_names,
    .field_map_slices = ts_field_map_slices,
    .field_map_entries = ts_field_map_entries,
    .symbol_metadata = ts_symbol_metadata,
    .public_symbol_map = ts_symbol_map,
    .alias_map = ts_non_terminal_alias_map,
    .alias_sequences = &ts_alias_sequences[0][0],
    .lex_modes = ts_lex_modes,
    .lex_fn = ts_lex,
    .keyword_lex_fn = ts_lex_keywords,
    .keyword_capture_token = sym_word,
    .primary_state_ids = ts_primary_state_ids,
  };
  return &language;
}
#ifdef __cplusplus
}
#endif
