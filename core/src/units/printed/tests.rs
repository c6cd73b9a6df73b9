//! Numbers in invented text.

use super::*;

/// Each number of a text with its unit, as printed.
fn all(text: &str) -> Vec<(&str, &str)> {
    printed(text)
        .into_iter()
        .flat_map(|line| line.numbers)
        .map(|number| (number.number, number.unit_said))
        .collect()
}

fn one(text: &str) -> PrintedNumber<'_> {
    let mut lines = printed(text);
    assert_eq!(lines.len(), 1, "{text}");
    let mut numbers = lines.remove(0).numbers;
    assert_eq!(numbers.len(), 1, "{text}: {numbers:?}");
    numbers.remove(0)
}

fn unit(counted: Counted, per: Per) -> Option<PrintedUnit> {
    Some(PrintedUnit {
        counted,
        per,
        digestible: false,
    })
}

#[test]
fn units_are_read_as_they_are_written() {
    use Counted::*;
    use Per::*;
    for (text, wanted) in [
        ("x 1.2 %", unit(Percent, Kilogram)),
        ("x 1.2%", unit(Percent, Kilogram)),
        ("x 1.2 per cent", unit(Percent, Kilogram)),
        ("x 1.2 g/100g", unit(Percent, Kilogram)),
        ("x 1.2 g / 100 g", unit(Percent, Kilogram)),
        ("x 1.2 g/kg", unit(Gram, Kilogram)),
        ("x 1.2 g per kg", unit(Gram, Kilogram)),
        ("x 400mg/kg", unit(Milligram, Kilogram)),
        ("x 400 MG/KG", unit(Milligram, Kilogram)),
        ("x 400 ppm", unit(Milligram, Kilogram)),
        ("x 400 µg/kg", unit(Microgram, Kilogram)),
        ("x 400 (mg/kg)", unit(Milligram, Kilogram)),
        ("x, mg/kg 400", unit(Milligram, Kilogram)),
        ("x (%) 4", unit(Percent, Kilogram)),
        ("x 900 I.U./kg", unit(InternationalUnit, Kilogram)),
        ("x 900 iu per kg", unit(InternationalUnit, Kilogram)),
        ("x 20 mg per serving", unit(Milligram, Serving)),
        (
            "x 80 mg per 100 kg body weight",
            unit(Milligram, HundredKgBody),
        ),
        ("x 80 mg/100kg", unit(Milligram, HundredKgBody)),
        ("x 10 MJ/kg", unit(Megajoule, Kilogram)),
        ("x 2.4 Mcal/kg", unit(Megacalorie, Kilogram)),
        // Not understood, and not taken for something else.
        ("x 12 mg/100g", None),
        ("x 12 mg", None),
        ("x 12 mg/day", None),
        ("x 12 mg/kg body weight", None),
        ("x 12 mg per 100 kg of feed", None),
        ("x 12 g per 50 g", None),
        ("x 12 kcal/kg", None),
        ("x 12 g/tonne", None),
        ("x 3 % per day", None),
        ("x % 12 mg/kg", None),
        ("x 12", None),
    ] {
        assert_eq!(one(text).unit, wanted, "{text}");
    }
    let energy = one("Energy 10.4 MJ DE/kg").unit.unwrap();
    assert!(energy.digestible && energy.per == Kilogram);
    assert!(one("Energy 10.4 MJ/kg DE").unit.unwrap().digestible);
    assert_eq!(one("x 12 mg/100g").unit_said, "mg/100g");
}

#[test]
fn numbers_are_read_or_have_both_their_readings() {
    for (text, number, readings) in [
        ("x 0,8 %", "0,8", vec![0.8]),
        ("x 1,200 IU/kg", "1,200", vec![1.2, 1200.0]),
        ("x 1,234.5 mg/kg", "1,234.5", vec![1234.5]),
        ("x 12 000 IU/kg", "12 000", vec![12_000.0]),
        ("x 12\u{a0}500 IU/kg", "12\u{a0}500", vec![12_500.0]),
        ("x 1.200 g/kg", "1.200", vec![1.2]),
        ("x .5 %", ".5", vec![0.5]),
        ("x 8.", "8", vec![8.0]),
    ] {
        let found = one(text);
        assert_eq!((found.number, found.readings), (number, readings), "{text}");
    }
    // A blank can part thousands or columns.
    assert_eq!(
        all("x 12 500 IU/kg"),
        [("12 500", "IU/kg"), ("12", ""), ("500", "IU/kg")]
    );
}

#[test]
fn codes_dates_ratios_and_tolerances_are_no_numbers() {
    for text in [
        "E4 copper",
        "vitamin B12",
        "3a700",
        "omega-3",
        "25-hydroxy",
        "12.05.2024",
        "Ca:P 2:1",
        "",
        "± 0.5",
        ".5abc",
        ",7x",
    ] {
        assert_eq!(all(text), [], "{text}");
    }
    assert_eq!(all("Vitamin E (3a700) 900 IU/kg"), [("900", "IU/kg")]);
    assert_eq!(all("Ash 8.1 ± 0.5 %"), [("8.1", "")]);
}

#[test]
fn several_on_a_line_keep_their_own_words() {
    let lines = printed("Ca 1.2% P 0.5%\nCalcium (min) 3.0 % (max) 4.0 %, protein 8 - 10 %");
    let words: Vec<(&str, &str, bool)> = lines
        .iter()
        .flat_map(|line| &line.numbers)
        .map(|number| (number.before.trim(), number.number, number.goes_on))
        .collect();
    assert_eq!(
        words,
        [
            ("Ca", "1.2", false),
            ("P", "0.5", false),
            ("Calcium (min)", "3.0", false),
            ("(max)", "4.0", true),
            (", protein", "8", false),
            ("-", "10", true),
        ]
    );
    let warranted: Vec<Option<Warranted>> = lines
        .iter()
        .flat_map(|line| &line.numbers)
        .map(|number| number.warranted)
        .collect();
    assert_eq!(warranted[2], Some(Warranted::Least));
    assert_eq!(warranted[3], Some(Warranted::Most));
    for (text, wanted) in [
        ("Calcium 3 % min.", Warranted::Least),
        ("Calcium not less than 3 %", Warranted::Least),
        ("Starch up to 3 %", Warranted::Most),
        ("Starch < 3 %", Warranted::Most),
    ] {
        assert_eq!(one(text).warranted, Some(wanted), "{text}");
    }
}

#[test]
fn a_basis_is_a_hint_and_dry_matter_alone_is_a_line() {
    assert_eq!(bases_said("Dry matter 89 %"), BasesSaid::default());
    assert!(bases_said("As sampled   Dry matter basis").as_fed);
    assert!(bases_said("Calcium 4 g/kg DM").dry_matter);
    assert!(!bases_said("Calcium 4 g/kg DM").as_fed);
    // It belongs to the number before it, unless a number follows.
    let numbers = &printed("Protein 14 % dry matter 89 %, fat 3 % of dry matter")[0].numbers;
    let words: Vec<&str> = numbers.iter().map(|number| number.before.trim()).collect();
    assert_eq!(words, ["Protein", "dry matter", ", fat"]);
}

#[test]
fn a_form_is_not_the_thing_and_a_compound_is_not_its_mineral() {
    let phrases = [
        ("copper", Some('c')),
        ("sodium", Some('n')),
        ("selenium", Some('s')),
        ("starch", Some('t')),
        ("sugar and starch", Some('u')),
        ("sodium chloride", None),
    ];
    let symbols = [("Cu", 'c'), ("K", 'k')];
    let named = |before| named(before, &phrases, &symbols);
    for (before, wanted) in [
        ("Copper (as copper sulphate) ", Named::One('c')),
        ("Copper as sulphate", Named::One('c')),
        ("E4 COPPER", Named::One('c')),
        ("Selenium (sodium selenite) ", Named::One('s')),
        ("(of which starch ", Named::One('t')),
        ("Sugar and starch", Named::One('u')),
        ("Trace element (Cu)", Named::One('c')),
        ("Total Cu", Named::One('c')),
        ("Copper Cu", Named::One('c')),
        ("Copper sulphate", Named::Other),
        ("Sodium chloride", Named::Other),
        ("Copper, selenium", Named::Other),
        ("Fibre", Named::Nothing),
        ("cu", Named::Nothing),
        ("", Named::Nothing),
    ] {
        assert_eq!(named(before), wanted, "{before}");
    }
}
