//! What is served brings nothing from elsewhere and writes no markup from text.

use crate::hold;
use crate::walk::{File, files};

/// The only addresses that may stand in what is served: the names of the standards' namespaces.
const NAMESPACES: [&str; 2] = ["http://www.w3.org/", "https://www.w3.org/"];

/// Ways to make markup from text.
const FROM_TEXT: [&str; 6] = [
    "inner_html",
    "innerHTML",
    "outerHTML",
    "insertAdjacentHTML",
    "document.write",
    "srcdoc",
];

fn elsewhere(file: &File) -> Vec<String> {
    let mut faults = Vec::new();
    for (index, line) in file.text.lines().enumerate() {
        for (at, _) in line.match_indices("://") {
            let from = line[..at]
                .rfind(|c: char| !c.is_ascii_alphabetic())
                .map_or(0, |p| p + 1);
            let address = &line[from..];
            if !NAMESPACES.iter().any(|space| address.starts_with(space)) {
                faults.push(format!("{}:{} {}", file.path, index + 1, line.trim()));
            }
        }
        let bare = ["src=\"//", "href=\"//", "url(//", "url(\"//", "url('//"];
        if bare.iter().any(|start| line.contains(start)) {
            faults.push(format!("{}:{} {}", file.path, index + 1, line.trim()));
        }
    }
    faults
}

fn from_text(file: &File) -> Vec<String> {
    file.code_lines()
        .filter(|(_, line)| FROM_TEXT.iter().any(|way| line.contains(way)))
        .map(|(number, line)| format!("{}:{number} {}", file.path, line.trim()))
        .collect()
}

/// A style, an `on…` handler or a script inside markup, which the content security policy refuses.
fn inline(file: &File) -> Vec<String> {
    let markup = matches!(file.extension(), "html" | "svg");
    file.code_lines()
        .filter(|(_, line)| {
            let style = line.match_indices("style").any(|(at, word)| {
                let before = line[..at].chars().next_back();
                let after = line[at + word.len()..].trim_start();
                let starts = before.is_none_or(|c| c.is_whitespace() || c == '<' || c == '"');
                let assigns = after.starts_with('=') && !after.starts_with("==");
                // `style:colour=` sets a single property, which ends in the same attribute.
                let sets = !markup
                    && after.starts_with(':')
                    && after.contains('=')
                    && !after.starts_with("::");
                starts && (assigns || sets)
            });
            // What the build puts in between these stands in the policy by its hash.
            let built = line.contains("@@inline:");
            let element = markup && line.contains("<style") && !built;
            let script = markup && line.contains("<script") && !line.contains("src=") && !built;
            let handler = markup
                && [" onclick=", " onload=", " onerror=", " onsubmit="]
                    .iter()
                    .any(|h| line.contains(h));
            style || element || script || handler
        })
        .map(|(number, line)| format!("{}:{number} {}", file.path, line.trim()))
        .collect()
}

fn served() -> Vec<File> {
    files(
        "public",
        &["html", "css", "js", "svg", "webmanifest", "txt"],
    )
}

#[test]
fn nothing_is_asked_of_another_origin() {
    let all: Vec<String> = served().iter().flat_map(elsewhere).collect();
    hold(&all);
}

#[test]
fn no_markup_is_made_from_text() {
    let mut all = served();
    all.extend(files("app/src", &["rs"]));
    let all: Vec<String> = all.iter().flat_map(from_text).collect();
    hold(&all);
}

#[test]
fn no_style_and_no_script_stands_in_markup() {
    let mut all: Vec<File> = files("public", &["html", "svg"]);
    all.extend(files("app/src", &["rs"]));
    let all: Vec<String> = all.iter().flat_map(inline).collect();
    hold(&all);
}

#[cfg(test)]
mod samples {
    use super::*;

    #[test]
    fn an_address_elsewhere_is_found() {
        for text in [
            "<script src=\"https://cdn.example/x.js\"></script>",
            "@import url(//fonts.example/f.css);",
            "fetch('wss://example.org')",
            "<img src=\"//example.org/a.png\">",
        ] {
            assert_eq!(elsewhere(&File::sample("a.html", text)).len(), 1, "{text}");
        }
        for text in [
            "<svg xmlns=\"http://www.w3.org/2000/svg\">",
            "<link href=\"styles.css\">",
            "// a comment",
        ] {
            assert!(
                elsewhere(&File::sample("a.html", text)).is_empty(),
                "{text}"
            );
        }
    }

    #[test]
    fn markup_from_text_is_found() {
        for text in ["view! { <p inner_html=x/> }", "el.innerHTML = x;"] {
            assert_eq!(from_text(&File::sample("a.js", text)).len(), 1, "{text}");
        }
        assert!(from_text(&File::sample("a.js", "// no innerHTML\n")).is_empty());
        let comment = "<!--\n innerHTML\n-->\n<p>";
        assert!(from_text(&File::sample("a.html", comment)).is_empty());
        let after = "<!-- x -->innerHTML";
        assert_eq!(from_text(&File::sample("a.html", after)).len(), 1);
    }

    #[test]
    fn a_style_or_script_in_markup_is_found() {
        for (path, text) in [
            ("a.html", "<p style=\"color: red\">"),
            ("a.html", "<style>"),
            ("a.html", "<script>go()</script>"),
            ("a.html", "<p onclick=\"go()\">"),
            ("a.rs", "view! { <p style=\"color: red\"/> }"),
            ("a.rs", "view! { <p style:color=\"red\"/> }"),
        ] {
            assert_eq!(inline(&File::sample(path, text)).len(), 1, "{text}");
        }
        for (path, text) in [
            ("a.html", "<link rel=\"stylesheet\" href=\"styles.css\">"),
            (
                "a.html",
                "<script src=\"start.js\" type=\"module\"></script>",
            ),
            ("a.html", "<style>@@inline:styles.css@@</style>"),
            ("a.html", "<script>@@inline:shell.js@@</script>"),
            ("a.rs", "let my_style = 1;"),
            ("a.rs", "use crate::style::Tag;"),
        ] {
            assert!(inline(&File::sample(path, text)).is_empty(), "{text}");
        }
    }
}
