//! The app shows and stores; it does not reckon, and it reaches the browser through two doors.

use crate::hold;
use crate::walk::{File, files};
use syn::visit::{self, Visit};

/// Where the app may speak to the browser itself.
const DOORS: [&str; 2] = ["app/src/device", "app/src/keep"];

/// Files outside the doors that speak to the browser, and why.
const BESIDE: [(&str, &str); 2] = [
    ("app/src/lib.rs", "the entry that the page calls"),
    ("app/src/parts/shell.rs", "takes over the painted shell"),
];

/// The crates that reach the browser, and the names that read its clock.
const BROWSER: [&str; 5] = [
    "web_sys",
    "js_sys",
    "gloo_storage",
    "wasm_bindgen",
    "wasm_bindgen_futures",
];
const CLOCKS: [&str; 4] = ["Date", "Instant", "SystemTime", "Performance"];

struct Names {
    found: Vec<(usize, String)>,
}

impl<'ast> Visit<'ast> for Names {
    fn visit_path(&mut self, path: &'ast syn::Path) {
        let names: Vec<String> = path.segments.iter().map(|s| s.ident.to_string()).collect();
        let line = path
            .segments
            .first()
            .map_or(0, |s| s.ident.span().start().line);
        if let Some(first) = names.first()
            && (BROWSER.contains(&first.as_str()) || first.starts_with("gloo"))
        {
            self.found.push((line, first.clone()));
        }
        if let [.., clock, now] = names.as_slice()
            && now == "now"
            && CLOCKS.contains(&clock.as_str())
        {
            self.found.push((line, format!("{clock}::now")));
        }
        // `Mark::Published` is a word for a constant's trust, not a constant.
        let of_mark = names.iter().any(|name| name == "Mark");
        if !of_mark && names.iter().any(|name| name == "Published") {
            self.found.push((line, "Published".to_owned()));
        }
        visit::visit_path(self, path);
    }
    fn visit_use_tree(&mut self, tree: &'ast syn::UseTree) {
        let ident = match tree {
            syn::UseTree::Path(part) => Some(&part.ident),
            syn::UseTree::Name(part) => Some(&part.ident),
            syn::UseTree::Rename(part) => Some(&part.ident),
            _ => None,
        };
        if let Some(ident) = ident {
            let name = ident.to_string();
            if BROWSER.contains(&name.as_str()) || name.starts_with("gloo") || name == "Published" {
                self.found.push((ident.span().start().line, name));
            }
        }
        visit::visit_use_tree(self, tree);
    }
}

fn names(file: &File) -> Vec<(usize, String)> {
    let mut names = Names { found: Vec::new() };
    names.visit_file(&file.syntax());
    names.found
}

/// Browser names outside the doors, and constants of the trade anywhere in the app.
fn faults(file: &File) -> Vec<String> {
    let open = file.within(&DOORS) || BESIDE.iter().any(|(path, _)| *path == file.path);
    names(file)
        .into_iter()
        .filter(|(_, name)| !open || name == "Published")
        .map(|(line, name)| format!("{}:{line} {name}", file.path))
        .collect()
}

#[test]
fn the_app_reaches_the_browser_through_device_and_keep_only() {
    let all: Vec<String> = files("app/src", &["rs"]).iter().flat_map(faults).collect();
    hold(&all);
}

#[test]
fn the_flow_knows_no_browser_and_no_clock() {
    let all: Vec<String> = files("app/flow", &["rs"]).iter().flat_map(faults).collect();
    hold(&all);
}

#[test]
fn one_file_reads_the_clock() {
    let all: Vec<String> = files("app/src", &["rs"])
        .iter()
        .filter(|file| file.path != "app/src/device/clock.rs")
        .flat_map(|file| {
            names(file)
                .into_iter()
                .filter(|(_, name)| name.ends_with("::now"))
                .map(|(line, name)| format!("{}:{line} {name}", file.path))
        })
        .collect();
    hold(&all);
}

#[cfg(test)]
mod samples {
    use super::*;

    #[test]
    fn a_way_around_the_doors_is_found() {
        for text in [
            "use web_sys::Window;",
            "use {js_sys::Date};",
            "fn f() { web_sys::window(); }",
            "fn f() { gloo_timers::sleep(); }",
            "use tussock_core::sources::Published;",
            "fn f() -> i64 { std::time::Instant::now() }",
        ] {
            let sample = File::sample("app/src/places/round.rs", text);
            assert_eq!(faults(&sample).len(), 1, "{text}");
        }
        let inside = File::sample("app/src/keep/raw.rs", "use web_sys::Window;");
        assert!(faults(&inside).is_empty());
        let constant = File::sample("app/src/keep/raw.rs", "fn f(p: Published<f64>) {}");
        assert_eq!(faults(&constant).len(), 1);
    }
}
