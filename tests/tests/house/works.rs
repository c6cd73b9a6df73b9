//! Every work of the bibliography is used.

use crate::hold;
use crate::published::idents_deep;
use crate::walk::files;
use std::collections::BTreeSet;
use syn::visit::{self, Visit};
use tussock_tests::reference::tables;

/// Works in the bibliography that no constant, no line of the core and no reference table cites, and why they stand.
const WAITING: [(&str, &str); 4] = [
    (
        "Javma2009",
        "a rule without a number: an animal off its feed",
    ),
    (
        "Wylie2016",
        "a rule without a number: the signs of laminitis",
    ),
    (
        "McGowan2013",
        "loss under restriction, for the room progress",
    ),
    (
        "MartinsonFeeders2012",
        "waste by feeder, for the room ration",
    ),
];

/// The works that a file names, as `Work::Name`.
struct Cited(BTreeSet<String>);

impl<'ast> Visit<'ast> for Cited {
    fn visit_path(&mut self, path: &'ast syn::Path) {
        let names: Vec<String> = path.segments.iter().map(|s| s.ident.to_string()).collect();
        if let [.., work, name] = names.as_slice()
            && work == "Work"
        {
            self.0.insert(name.clone());
        }
        visit::visit_path(self, path);
    }
    fn visit_macro(&mut self, call: &'ast syn::Macro) {
        let names = idents_deep(call.tokens.clone());
        for pair in names.windows(2) {
            if let [work, name] = pair
                && work == "Work"
            {
                self.0.insert(name.clone());
            }
        }
    }
}

/// A work as a place speaks of it: `Argo2015` is "Argo 2015".
fn spoken(work: &str) -> String {
    let name = work.trim_end_matches(|c: char| c.is_ascii_digit());
    format!("{name} {}", &work[name.len()..])
}

#[test]
fn every_work_is_cited_or_says_what_it_waits_for() {
    let mut cited = Cited(
        tussock_core::constants()
            .iter()
            .map(|constant| format!("{:?}", constant.work))
            .collect(),
    );
    let mut works = BTreeSet::new();
    for file in files("core/src", &["rs"]) {
        let syntax = file.syntax();
        if file.path != "core/src/sources/works.rs" {
            cited.visit_file(&syntax);
            continue;
        }
        for item in syntax.items {
            if let syn::Item::Enum(item) = item
                && item.ident == "Work"
            {
                works.extend(item.variants.iter().map(|v| v.ident.to_string()));
            }
        }
    }
    assert!(!works.is_empty(), "the bibliography is read");
    let waiting: BTreeSet<String> = WAITING.iter().map(|(work, _)| (*work).to_owned()).collect();
    let places: String = tussock_core::constants().iter().map(|c| c.place).collect();
    let places = places.to_lowercase();
    let tables: BTreeSet<String> = tables()
        .unwrap_or_else(|fault| panic!("{fault}"))
        .iter()
        .map(|table| table.work.replace('_', ""))
        .collect();
    let by_word = |work: &&String| {
        places.contains(&spoken(work).to_lowercase()) || tables.contains(&work.to_lowercase())
    };
    cited.0.extend(works.iter().filter(by_word).cloned());
    let mut faults: Vec<String> = works
        .iter()
        .filter(|work| !cited.0.contains(*work) && !waiting.contains(*work))
        .map(|work| format!("Work::{work}: nothing cites it"))
        .collect();
    for work in &waiting {
        if cited.0.contains(work) || !works.contains(work) {
            faults.push(format!("Work::{work}: it need not wait any more"));
        }
    }
    hold(&faults);
}

#[cfg(test)]
mod samples {
    use super::*;

    #[test]
    fn a_work_is_found_by_its_name_alone() {
        let mut cited = Cited(BTreeSet::new());
        let text = "fn f() { g(Work::Argo2012, sources::Work::Argo2015); m!(Work::Dosi2020); Mark::Ours; }";
        cited.visit_file(&syn::parse_file(text).expect("a sample is well formed"));
        let found: Vec<&str> = cited.0.iter().map(String::as_str).collect();
        assert_eq!(found, ["Argo2012", "Argo2015", "Dosi2020"]);
        assert_eq!(spoken("Argo2015"), "Argo 2015");
    }
}
