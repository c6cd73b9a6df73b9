//! Where things lie, how long a file may be, and what its name may not be.

use crate::hold;
use crate::walk::{File, files, name_of, paths};

/// The top level, exactly.
const TOP: [&str; 15] = [
    ".cargo",
    ".ci",
    ".clippy.toml",
    ".gitignore",
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE-APACHE",
    "LICENSE-MIT",
    "README.md",
    "app",
    "core",
    "e2e",
    "public",
    "tests",
];

const LONGEST: usize = 400;

/// Files that may be longer, and why.
const LONG: [(&str, &str); 2] = [
    (
        "core/src/sources/works.rs",
        "the bibliography, one entry a work",
    ),
    ("public/styles.css", "the one stylesheet, in its layers"),
];

/// Words that say nothing about what a file holds.
const EMPTY_NAMES: [&str; 5] = ["util", "utils", "common", "manager", "managers"];

fn too_long(file: &File, long: &[(&str, &str)]) -> Option<String> {
    let lines = file.text.lines().count();
    let may = long.iter().any(|(path, _)| *path == file.path);
    match (lines > LONGEST, may) {
        (true, false) => Some(format!("{}: {lines} lines, {LONGEST} allowed", file.path)),
        (false, true) => Some(format!(
            "{}: {lines} lines; it need not be in the list of long files",
            file.path
        )),
        _ => None,
    }
}

fn empty_name(path: &str) -> Option<String> {
    path.split('/')
        .any(|part| {
            part.split(['.', '_', '-'])
                .any(|word| EMPTY_NAMES.contains(&word.to_lowercase().as_str()))
        })
        .then(|| format!("{path}: the name says nothing"))
}

/// What stands unfinished: a mark to come back to, or a test that does not run.
fn unfinished(file: &File) -> Vec<String> {
    // Parted, so that this file does not find itself.
    let marks = [
        concat!("TO", "DO"),
        concat!("FIX", "ME"),
        concat!("XX", "X"),
        concat!("#[ign", "ore"),
        concat!("#[should", "_panic"),
        concat!("test.on", "ly("),
        concat!("test.fix", "me("),
    ];
    file.text
        .lines()
        .enumerate()
        .flat_map(|(index, line)| {
            marks
                .iter()
                .filter(|mark| line.contains(*mark))
                .map(move |mark| format!("{}:{} {mark}", file.path, index + 1))
                .collect::<Vec<_>>()
        })
        .collect()
}

#[test]
fn the_top_level_is_exactly_as_designed() {
    let mut found: Vec<String> = paths("")
        .iter()
        .map(|path| path.split('/').next().unwrap_or(path).to_owned())
        .collect();
    found.dedup();
    assert_eq!(found, TOP);
}

#[test]
fn no_file_is_long() {
    let all: Vec<String> = files("", &["rs", "ts", "js", "css"])
        .iter()
        .filter_map(|file| too_long(file, &LONG))
        .collect();
    hold(&all);
}

#[test]
fn every_name_says_what_it_holds() {
    let all: Vec<String> = paths("").iter().filter_map(|p| empty_name(p)).collect();
    hold(&all);
}

#[test]
fn nothing_stands_unfinished() {
    let kinds = [
        "rs", "ts", "js", "mjs", "css", "html", "md", "toml", "py", "sh", "yml",
    ];
    let mut all: Vec<String> = files("", &kinds).iter().flat_map(unfinished).collect();
    for path in paths("") {
        if ["bak", "orig", "rej", "swp"].contains(&name_of(&path).rsplit('.').next().unwrap_or(""))
        {
            all.push(format!("{path}: left over"));
        }
    }
    hold(&all);
}

#[cfg(test)]
mod samples {
    use super::*;

    #[test]
    fn a_long_file_is_found_and_a_needless_exception_too() {
        let file = |lines: usize| File::sample("a.rs", &"x\n".repeat(lines));
        assert!(too_long(&file(401), &[]).is_some());
        assert!(too_long(&file(400), &[]).is_none());
        assert!(too_long(&file(401), &[("a.rs", "why")]).is_none());
        assert!(too_long(&file(400), &[("a.rs", "why")]).is_some());
    }

    #[test]
    fn an_empty_name_is_found() {
        for path in [
            "app/src/utils.rs",
            "core/src/common/mod.rs",
            "e2e/soak-manager.ts",
        ] {
            assert!(empty_name(path).is_some(), "{path}");
        }
        assert!(empty_name("core/src/soak/commonage.rs").is_none());
    }

    #[test]
    fn what_is_unfinished_is_found() {
        let text = format!(
            "a\n// {}: later\n#[{}]\n",
            concat!("TO", "DO"),
            concat!("ign", "ore")
        );
        assert_eq!(unfinished(&File::sample("a.rs", &text)).len(), 2);
        assert!(unfinished(&File::sample("a.rs", "all done\n")).is_empty());
    }
}
