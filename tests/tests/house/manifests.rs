//! What the manifests may say: no clock through chrono, one set of lints, nothing browser-bound in core and flow.

use crate::hold;
use crate::walk::text;
use toml::{Table, Value};

/// Features of chrono that read a clock or the browser.
const CLOCKS: [&str; 6] = [
    "clock",
    "now",
    "wasmbind",
    "default",
    "std",
    "iana-time-zone",
];

/// Crates that core and flow may not name: they reach a browser, a clock or chance.
const IMPURE: [&str; 14] = [
    "js-sys",
    "web-sys",
    "wasm-bindgen",
    "wasm-bindgen-futures",
    "gloo-storage",
    "gloo-timers",
    "leptos",
    "getrandom",
    "rand",
    "uuid",
    "web-time",
    "chrono-tz",
    "microlp",
    "icalendar",
];

const TABLES: [&str; 3] = ["dependencies", "dev-dependencies", "build-dependencies"];

fn parse(path: &str) -> Table {
    text(path).parse().unwrap_or_else(|e| panic!("{path}: {e}"))
}

fn members() -> Vec<String> {
    let workspace = parse("Cargo.toml");
    let members = workspace["workspace"]["members"]
        .as_array()
        .expect("the workspace lists its members");
    members
        .iter()
        .map(|member| format!("{}/Cargo.toml", member.as_str().expect("a folder")))
        .collect()
}

fn features(dependency: &Value) -> Vec<&str> {
    dependency
        .get("features")
        .and_then(Value::as_array)
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .collect()
}

/// The workspace's own line of chrono: bare, and without a feature that reads a clock.
fn workspace_chrono(workspace: &Table) -> Vec<String> {
    let Some(chrono) = workspace
        .get("workspace")
        .and_then(|w| w.get("dependencies"))
        .and_then(|d| d.get("chrono"))
    else {
        return vec!["Cargo.toml: chrono stands nowhere".to_owned()];
    };
    let mut faults = Vec::new();
    if chrono.get("default-features").and_then(Value::as_bool) != Some(false) {
        faults.push("Cargo.toml: chrono comes with its default features".to_owned());
    }
    for feature in features(chrono) {
        if CLOCKS.contains(&feature) {
            faults.push(format!("Cargo.toml: chrono with {feature}"));
        }
    }
    faults
}

/// A member takes chrono from the workspace, adds no clock, and takes the workspace's lints.
fn member(path: &str, manifest: &Table) -> Vec<String> {
    let mut faults = Vec::new();
    for table in TABLES {
        let Some(chrono) = manifest.get(table).and_then(|t| t.get("chrono")) else {
            continue;
        };
        if chrono.get("workspace").and_then(Value::as_bool) != Some(true) {
            faults.push(format!("{path}: {table}: chrono is not the workspace's"));
        }
        for feature in features(chrono) {
            if CLOCKS.contains(&feature) {
                faults.push(format!("{path}: {table}: chrono with {feature}"));
            }
        }
    }
    if manifest.get("features").is_some() {
        faults.push(format!("{path}: features of our own"));
    }
    let lints = manifest
        .get("lints")
        .and_then(|l| l.get("workspace"))
        .and_then(Value::as_bool);
    if lints != Some(true) {
        faults.push(format!("{path}: the lints are not the workspace's"));
    }
    faults
}

/// Core and flow name nothing that reaches a browser, a clock or chance, under any target.
fn impure(path: &str, manifest: &Table) -> Vec<String> {
    let mut tables: Vec<&Value> = manifest.get("dependencies").into_iter().collect();
    let targets = manifest.get("target").and_then(Value::as_table);
    tables.extend(
        targets
            .into_iter()
            .flat_map(|t| t.values())
            .filter_map(|t| t.get("dependencies")),
    );
    tables
        .iter()
        .filter_map(|t| t.as_table())
        .flat_map(Table::keys)
        .filter(|name| IMPURE.contains(&name.as_str()))
        .map(|name| format!("{path}: {name}"))
        .collect()
}

#[test]
fn chrono_stands_once_and_reads_no_clock() {
    let mut faults = workspace_chrono(&parse("Cargo.toml"));
    for path in members() {
        faults.extend(member(&path, &parse(&path)));
    }
    hold(&faults);
}

#[test]
fn core_and_flow_name_nothing_that_reaches_a_browser_a_clock_or_chance() {
    let mut faults = Vec::new();
    for path in ["core/Cargo.toml", "app/flow/Cargo.toml"] {
        faults.extend(impure(path, &parse(path)));
    }
    hold(&faults);
}

#[cfg(test)]
mod samples {
    use super::*;

    fn table(text: &str) -> Table {
        text.parse().expect("a sample is well formed")
    }

    #[test]
    fn a_clock_is_found() {
        for text in [
            "[workspace.dependencies]\nserde = \"1\"",
            "[workspace.dependencies]\nchrono = \"0.4\"",
            "[workspace.dependencies]\nchrono = { version = \"0.4\", features = [\"alloc\"] }",
            "[workspace.dependencies]\nchrono = { default-features = false, features = [\"clock\"] }",
        ] {
            assert_eq!(workspace_chrono(&table(text)).len(), 1, "{text}");
        }
        let good = "[dependencies]\nchrono.workspace = true\n[lints]\nworkspace = true";
        assert_eq!(member("m", &table(good)), Vec::<String>::new());
        for text in [
            "[dependencies]\nchrono = { version = \"0.4\", default-features = false }\n[lints]\nworkspace = true",
            "[dependencies]\nchrono = { workspace = true, features = [\"wasmbind\"] }\n[lints]\nworkspace = true",
            "[dependencies]\nchrono.workspace = true",
            "[features]\nfast = []\n[lints]\nworkspace = true",
        ] {
            assert_eq!(member("m", &table(text)).len(), 1, "{text}");
        }
    }

    #[test]
    fn what_is_impure_is_found() {
        assert!(impure("m", &table("[dependencies]\nserde = \"1\"")).is_empty());
        for text in [
            "[dependencies]\nrand = \"1\"",
            "[target.'cfg(target_arch = \"wasm32\")'.dependencies]\njs-sys = \"1\"",
        ] {
            assert_eq!(impure("m", &table(text)).len(), 1, "{text}");
        }
    }
}
