//! Reading pasted text.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::forage::read_report;
use tussock_core::ration::read_label;

/// Whatever somebody pastes, and what looks like a label.
fn pasted() -> impl Strategy<Value = String> {
    let line = "(Calcium|Ca|E4 Copper|Vit\\. E|dry matter|starch|\\(of which|min|max|[A-Za-z(). ]{0,12})[ :(]{0,2}[0-9]{0,4}[ .,]?[0-9]{0,3} ?(%|mg/kg|g/100 ?g|ppm|i\\.u\\.|MJ DE/kg|per 100 kg|g per serving|-|)[ )]?";
    prop_oneof![
        any::<String>(),
        "[ -~\\n]{0,120}",
        prop::collection::vec(line, 0..6).prop_map(|lines| lines.join("\n")),
        prop::collection::vec(line, 0..6).prop_map(|lines| lines.join(" ")),
    ]
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn what_is_read_of_a_label_stands_in_its_line(text in pasted()) {
        let read = read_label(&text);
        for found in &read.found {
            prop_assert!(text.contains(&found.line));
            prop_assert!(!found.number.is_empty() && found.line.contains(&found.number));
            prop_assert!(found.line.contains(&found.unit_said));
            prop_assert!(found.value.is_finite() && found.value >= 0.0);
            prop_assert!(found.content.is_some() || found.unit.is_some());
        }
        for line in &read.not_read {
            prop_assert!(text.contains(line.as_str()));
        }
    }

    #[test]
    fn what_is_read_of_a_report_stands_in_its_line(text in pasted()) {
        let read = read_report(&text);
        for found in &read.found {
            prop_assert!(text.contains(&found.line));
            prop_assert!(!found.number.is_empty() && found.line.contains(&found.number));
            prop_assert!(found.value.is_finite() && found.value >= 0.0);
        }
    }
}
