//! Core and flow do not panic on input, and hold no unsafe code.

use crate::hold;
use crate::literals::{attributes, is_test_only, test_only_places};
use crate::walk::{File, files};
use std::collections::BTreeSet;
use syn::visit::{self, Visit};

/// The doors of the two crates.
const DOORS: [&str; 2] = ["core/src/lib.rs", "app/flow/src/lib.rs"];

/// What they deny.
const DENIED: [&str; 5] = [
    "clippy::unwrap_used",
    "clippy::expect_used",
    "clippy::panic",
    "clippy::indexing_slicing",
    "clippy::float_cmp",
];

/// What no code outside tests may allow again. Indexing and comparing floats may be allowed with a reason, for a
/// numeric kernel whose bound is stated.
const NEVER_ALLOWED: [&str; 3] = [
    "clippy::unwrap_used",
    "clippy::expect_used",
    "clippy::panic",
];

/// Macros that panic and that the lints above do not see.
const PANICKING: [&str; 3] = ["todo", "unimplemented", "unreachable"];

/// The lints of an attribute such as `deny(..)`, and whether it gives a reason.
fn lints(attribute: &syn::Attribute, level: &str) -> Option<(Vec<String>, bool)> {
    if !attribute.path().is_ident(level) {
        return None;
    }
    let mut names = Vec::new();
    let mut reason = false;
    let read = attribute.parse_nested_meta(|meta| {
        if meta.path.is_ident("reason") {
            reason = true;
            meta.value()?.parse::<syn::LitStr>()?;
        } else {
            let parts: Vec<String> = meta
                .path
                .segments
                .iter()
                .map(|s| s.ident.to_string())
                .collect();
            names.push(parts.join("::"));
        }
        Ok(())
    });
    read.ok().map(|()| (names, reason))
}

fn door(file: &File) -> Vec<String> {
    let syntax = file.syntax();
    let set = |level: &str| -> BTreeSet<String> {
        syntax
            .attrs
            .iter()
            .filter_map(|a| lints(a, level))
            .flat_map(|(names, _)| names)
            .collect()
    };
    let (denied, forbidden) = (set("deny"), set("forbid"));
    let mut faults: Vec<String> = DENIED
        .iter()
        .filter(|lint| !denied.contains(**lint) && !forbidden.contains(**lint))
        .map(|lint| format!("{}: {lint} is not denied", file.path))
        .collect();
    if !forbidden.contains("unsafe_code") {
        faults.push(format!("{}: unsafe_code is not forbidden", file.path));
    }
    faults
}

/// Looks for ways around the denied lints outside tests.
struct Ways {
    found: Vec<(usize, String)>,
}

impl<'ast> Visit<'ast> for Ways {
    fn visit_item(&mut self, item: &'ast syn::Item) {
        if !is_test_only(attributes(item)) {
            visit::visit_item(self, item);
        }
    }
    fn visit_attribute(&mut self, attribute: &'ast syn::Attribute) {
        let line = attribute.pound_token.spans[0].start().line;
        for level in ["allow", "expect"] {
            let Some((names, reason)) = lints(attribute, level) else {
                continue;
            };
            for name in names {
                let denied = DENIED.contains(&name.as_str());
                if NEVER_ALLOWED.contains(&name.as_str()) || (denied && !reason) {
                    self.found.push((line, format!("{level}({name})")));
                }
            }
        }
    }
    fn visit_macro(&mut self, call: &'ast syn::Macro) {
        if let Some(last) = call.path.segments.last()
            && PANICKING.contains(&last.ident.to_string().as_str())
        {
            self.found
                .push((last.ident.span().start().line, format!("{}!", last.ident)));
        }
    }
}

fn ways_around(file: &File) -> Vec<String> {
    let mut ways = Ways { found: Vec::new() };
    ways.visit_file(&file.syntax());
    ways.found
        .into_iter()
        .map(|(line, way)| format!("{}:{line} {way}", file.path))
        .collect()
}

#[test]
fn core_and_flow_deny_what_panics() {
    let mut all = files("core/src", &["rs"]);
    all.extend(files("app/flow/src", &["rs"]));
    let tests: Vec<String> = all
        .iter()
        .flat_map(|file| test_only_places(file, &file.syntax()))
        .collect();
    let mut faults = Vec::new();
    for file in all.iter().filter(|file| !file.within(&tests)) {
        if DOORS.contains(&file.path.as_str()) {
            faults.extend(door(file));
        }
        faults.extend(ways_around(file));
    }
    for path in DOORS {
        if !all.iter().any(|file| file.path == path) {
            faults.push(format!("{path}: missing"));
        }
    }
    hold(&faults);
}

#[cfg(test)]
mod samples {
    use super::*;

    const GOOD: &str = "#![forbid(unsafe_code)]\n#![deny(clippy::unwrap_used, clippy::expect_used, \
        clippy::panic, clippy::indexing_slicing, clippy::float_cmp)]\n";

    #[test]
    fn a_door_without_its_lints_is_found() {
        let faults = |text: &str| door(&File::sample("core/src/lib.rs", text)).len();
        assert_eq!(faults(GOOD), 0);
        assert_eq!(faults(&GOOD.replace("clippy::panic, ", "")), 1);
        assert_eq!(faults(&GOOD.replace("#![forbid(unsafe_code)]", "")), 1);
    }

    #[test]
    fn a_way_around_is_found() {
        let found = |text: &str| ways_around(&File::sample("core/src/a.rs", text)).len();
        for text in [
            "#[allow(clippy::unwrap_used, reason = \"surely\")]\nfn f() {}",
            "#![allow(clippy::panic)]",
            "#[expect(clippy::expect_used)]\nfn f() {}",
            "#[allow(clippy::indexing_slicing)]\nfn f() {}",
            "fn f() { todo!() }",
            "fn f() -> u8 { unreachable!(\"never\") }",
        ] {
            assert_eq!(found(text), 1, "{text}");
        }
        for text in [
            "#![cfg_attr(test, allow(clippy::panic))]",
            "#[cfg(test)]\nmod tests {\n#![allow(clippy::panic)]\nfn f() { todo!() }\n}",
            "#[allow(clippy::indexing_slicing, reason = \"n is the length\")]\nfn f() {}",
        ] {
            assert_eq!(found(text), 0, "{text}");
        }
    }
}
