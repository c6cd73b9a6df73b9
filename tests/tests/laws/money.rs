//! Prices: sums of one currency only.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::units::{Currency, Money, MoneyError};

fn currency() -> impl Strategy<Value = Currency> {
    "[A-Z]{3}".prop_filter_map("a code", |code| Currency::from_code(&code).ok())
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_code_comes_back_and_nothing_else_is_one(text in "[A-Za-z0-9 é]{0,5}") {
        let plain = text.len() == 3 && text.chars().all(|c| c.is_ascii_uppercase());
        match Currency::from_code(&text) {
            Ok(currency) => {
                prop_assert!(plain);
                prop_assert_eq!(currency.code(), text);
            }
            Err(MoneyError::NotACurrency { code }) => {
                prop_assert!(!plain);
                prop_assert_eq!(code, text);
            }
            Err(other) => prop_assert!(false, "{other:?}"),
        }
    }

    #[test]
    fn a_sum_is_exact_or_refused(
        a in any::<i64>(), b in any::<i64>(), first in currency(), second in currency()
    ) {
        let (x, y) = (Money { minor: a, currency: first }, Money { minor: b, currency: second });
        let sum = x.plus(y);
        prop_assert_eq!(sum.is_ok(), first == second && a.checked_add(b).is_some());
        if let Ok(sum) = sum {
            prop_assert_eq!(i128::from(sum.minor), i128::from(a) + i128::from(b));
            prop_assert_eq!(y.plus(x), Ok(sum));
        }
    }
}
