// The shape of a recipe for editors that use tree-sitter. It follows ../recipe.ebnf, with two differences that highlighting does not
// need: "to" is a sign of its own and never joins two ends into one node, and neither "+/-" nor the parts of "1 h 30 min" are joined
// to the amount before them. Which is meant depends on what units are worth, and only the compiler knows that.

/* Every spelling of a simple unit. */
const UNITS = [
  /* words: units */
  'millimeter', 'millimetre', 'degC-diff', 'degF-diff', 'microns', 'minutes', 'newtons', 'percent', 'seconds',
  'denier', 'inches', 'liters', 'litres', 'meters', 'metres', 'micron', 'minute', 'months', 'newton', 'second',
  'grams', 'hours', 'liter', 'litre', 'meter', 'metre', 'month', 'weeks', 'yards', 'years', 'Torr', 'days',
  'degC', 'degF', 'dtex', 'feet', 'floz', 'foot', 'gram', 'hour', 'inHg', 'inch', 'mbar', 'mmHg', 'sqft',
  'sqin', 'sqyd', 'thou', 'torr', 'week', 'yard', 'year', 'AUD', 'BRL', 'CAD', 'CHF', 'CNY', 'CZK', 'DKK',
  'EUR', 'GBP', 'GPa', 'HKD', 'HUF', 'IDR', 'ILS', 'INR', 'ISK', 'JPY', 'KRW', 'MPa', 'MXN', 'MYR', 'Msi',
  'NOK', 'NZD', 'PHP', 'PLN', 'RON', 'RSD', 'SEK', 'SGD', 'THB', 'TRY', 'TWD', 'UAH', 'USD', 'VND', 'ZAR',
  'atm', 'bar', 'cfm', 'cm2', 'cm3', 'cm²', 'cm³', 'day', 'deg', 'dm2', 'dm²', 'ft2', 'ft3', 'ft²', 'ft³',
  'gal', 'gsm', 'hPa', 'in2', 'in3', 'in²', 'in³', 'kPa', 'ksi', 'lbf', 'lbs', 'mPa', 'mil', 'min', 'mm2',
  'mm3', 'mm²', 'mm³', 'ppm', 'psi', 'sec', 'sqm', 'tex', 'yd2', 'yd²', 'Pa', 'cP', 'cc', 'cm', 'ft', 'hr',
  'in', 'kJ', 'kN', 'kW', 'kg', 'km', 'lb', 'm2', 'm3', 'mL', 'mg', 'ml', 'mm', 'm²', 'm³', 'oz', 'qt', 'um',
  'yd', '°C', '°F', 'µm', 'ºC', 'ºF', '˚C', '˚F', 'μm', '%', 'J', 'K', 'L', 'N', 'W', 'd', 'g', 'h', 'l', 'm',
  's', '°', 'º', '˚', '℃', '℉',
  /* end of words */
];

const BLANK = /[\t\p{Zs}\uFEFF]/u;

// Some versions of the generator know only the ends of the large East Asian ranges as letters.
const LETTER = '\\p{L}\\u3400-\\u4dbf\\u4e00-\\u9fff\\uac00-\\ud7a3';
const WORD = new RegExp(`[${LETTER}_][${LETTER}\\p{N}\\p{M}_]*(-[${LETTER}\\p{N}_][${LETTER}\\p{N}\\p{M}_]*)*`, 'u');

const unit = () => {
  const simple = choice(...UNITS);
  return token(seq(simple, repeat(seq(choice('/', '.', '\u00b7'), simple))));
};

const statements = ($) =>
  seq(repeat($._separator), repeat(seq($._statement, repeat1($._separator))), optional($._statement));

module.exports = grammar({
  name: 'recipe',

  extras: ($) => [BLANK, /[\r\n]/, $.comment],

  word: ($) => $.word,

  rules: {
    source_file: ($) => statements($),

    _statement: ($) => choice($.let, $.entry),

    // A line end is a blank where the grammar expects none, as inside parentheses.
    _separator: (_) => choice('\n', '\r\n', '\r', ';'),

    let: ($) => seq('let', field('name', $.word), '=', field('value', $._expression)),

    entry: ($) => seq(field('head', $.word), repeat($._value), optional(field('block', $.block))),

    block: ($) => seq('{', statements($), '}'),

    _value: ($) => choice(alias($.word, $.name), $.to, $.times, $.text, $.date, $._amount, $.plus_minus),

    _amount: ($) => choice($.quantity, $.signed, $.pair, $.ratio, $.parenthesis),

    quantity: ($) => seq($.number, optional($.unit)),

    signed: ($) => seq(choice('+', '-'), $.number, optional($.unit)),

    pair: ($) => seq(optional(choice('+', '-')), $.number, '/', optional(choice('+', '-')), $.number, optional($.unit)),

    ratio: ($) => seq($.number, repeat1(seq(':', $.number))),

    plus_minus: ($) => seq(choice('+/-', '\u00b1'), $._amount),

    to: (_) => 'to',

    // Between the sides of a size.
    times: (_) => choice('x', '\u00d7'),

    parenthesis: ($) => seq('(', $._expression, ')', optional($.unit)),

    _expression: ($) => choice($.binary, $.negation, $._operand),

    binary: ($) => choice(
      ...[['+', 1], ['-', 1], ['*', 2], ['/', 2]].map(([sign, precedence]) =>
        prec.left(precedence, seq(field('left', $._expression), field('operator', sign), field('right', $._expression))))),

    negation: ($) => prec(3, seq('-', $._operand)),

    _operand: ($) => choice(prec.right(repeat1($.quantity)), alias($.word, $.name), $.parenthesis),

    text: ($) => seq('"', repeat(choice($._text_content, $.escape)), token.immediate('"')),

    // A backslash before anything but a quote or a backslash stands for itself.
    _text_content: (_) => token.immediate(prec(1, /([^"\\\r\n]|\\[^"\\\r\n])+/)),

    escape: (_) => token.immediate(prec(2, /\\["\\]/)),

    date: (_) => /\d{4}-\d{2}-\d{2}/,

    number: (_) => /\d+(\.\d+)?([eE][+-]?\d+)?/,

    // Before the word: of two that are equally long the first wins.
    unit: (_) => unit(),

    word: (_) => WORD,

    comment: (_) => /#[^\r\n]*/,
  },
});
