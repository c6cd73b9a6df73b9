use std::collections::BTreeMap;

use super::*;

struct Folder(BTreeMap<&'static str, &'static str>);

impl Shelf for Folder {
    fn read(&self, path: &str) -> Option<Vec<u8>> {
        assert!(!path.contains(".."), "asked outside the folder: {path}");
        self.0.get(path).map(|text| text.as_bytes().to_vec())
    }
}

fn folder() -> Folder {
    Folder(BTreeMap::from([
        (
            "index.html",
            "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'\">",
        ),
        ("sw.js", "worker"),
        ("app-0123456789.wasm", "whole"),
        ("app-0123456789.wasm.br", "br"),
        ("app-0123456789.wasm.gz", "gz"),
        ("icons/a b.svg", "picture"),
    ]))
}

fn get(at: &str, target: &str) -> Answer {
    answer(
        &folder(),
        at,
        Ask {
            method: "GET",
            target,
            ..Ask::default()
        },
    )
}

fn header<'a>(answer: &'a Answer, name: &str) -> Option<&'a str> {
    answer
        .headers
        .iter()
        .find(|(key, _)| *key == name)
        .map(|(_, value)| value.as_str())
}

#[test]
fn the_folder_itself_is_its_first_page() {
    for (at, target) in [
        ("/", "/"),
        ("/", "/index.html"),
        ("/sub/path/", "/sub/path/"),
        ("/", "/?source=icon"),
    ] {
        let answer = get(at, target);
        assert_eq!(answer.status, 200, "{target}");
        assert_eq!(
            header(&answer, "Content-Type"),
            Some("text/html; charset=utf-8")
        );
        assert_eq!(header(&answer, "Cache-Control"), Some("no-cache"));
        assert_eq!(
            header(&answer, "Content-Security-Policy"),
            Some("default-src 'none'; frame-ancestors 'none'")
        );
        assert_eq!(header(&answer, "X-Content-Type-Options"), Some("nosniff"));
        assert_eq!(header(&answer, "Referrer-Policy"), Some("no-referrer"));
    }
}

#[test]
fn a_folder_asked_without_its_slash_is_sent_on() {
    let answer = get("/sub/path/", "/sub/path");
    assert_eq!(
        (answer.status, header(&answer, "Location")),
        (308, Some("/sub/path/"))
    );
}

#[test]
fn what_is_missing_is_a_plain_404_and_never_the_first_page() {
    for target in [
        "/none",
        "/none/",
        "/icons",
        "/icons/",
        "/sub/path/none.js",
        "/index.html/",
    ] {
        let answer = get("/", target);
        assert_eq!(answer.status, 404, "{target}");
        assert_eq!(
            header(&answer, "Content-Type"),
            Some("text/plain; charset=utf-8")
        );
        assert_eq!(answer.body, b"not found\n");
    }
    assert_eq!(get("/sub/", "/index.html").status, 404);
    assert_eq!(get("/sub/", "/subway/index.html").status, 404);
}

#[test]
fn no_path_leads_out_of_the_folder() {
    for target in [
        "/../Cargo.toml",
        "/..%2fCargo.toml",
        "/%2e%2e/Cargo.toml",
        "/%2e%2e%2fCargo.toml",
        "/icons/../../Cargo.toml",
        "/icons/%2E%2E/index.html",
        "/./index.html",
        "//etc/passwd",
        "/%2fetc/passwd",
        "/..\\Cargo.toml",
        "/%5c..%5cCargo.toml",
        "/C:/boot.ini",
        "/index.html%00",
        "/%",
        "/%4",
        "/%zz",
        "/%+1",
        "/%ff",
    ] {
        assert_eq!(get("/", target).status, 404, "{target}");
    }
}

#[test]
fn a_name_is_decoded() {
    assert_eq!(get("/", "/icons/a%20b.svg").body, b"picture");
}

#[test]
fn hashed_files_never_change_and_the_others_are_asked_for_again() {
    let wasm = get("/", "/app-0123456789.wasm");
    assert_eq!(
        header(&wasm, "Cache-Control"),
        Some("public, max-age=31536000, immutable")
    );
    assert_eq!(header(&wasm, "Content-Type"), Some("application/wasm"));
    assert_eq!(
        header(&get("/", "/sw.js"), "Cache-Control"),
        Some("no-cache")
    );
}

#[test]
fn the_compressed_form_is_sent_to_who_takes_it() {
    for (encodings, body, encoding) in [
        ("gzip, deflate, br", "br", Some("br")),
        ("gzip", "gz", Some("gzip")),
        ("gzip;q=1.0, br;q=0", "gz", Some("gzip")),
        ("br;q=0.5", "br", Some("br")),
        ("", "whole", None),
        ("identity, brotli", "whole", None),
    ] {
        let ask = Ask {
            method: "GET",
            target: "/app-0123456789.wasm",
            encodings,
            ..Ask::default()
        };
        let answer = answer(&folder(), "/", ask);
        assert_eq!(answer.body, body.as_bytes(), "{encodings}");
        assert_eq!(header(&answer, "Content-Encoding"), encoding);
        assert_eq!(header(&answer, "Vary"), Some("Accept-Encoding"));
        assert_eq!(header(&answer, "Content-Type"), Some("application/wasm"));
    }
}

#[test]
fn a_file_without_a_compressed_form_is_sent_whole() {
    let ask = Ask {
        method: "GET",
        target: "/sw.js",
        encodings: "br",
        ..Ask::default()
    };
    let answer = answer(&folder(), "/", ask);
    assert_eq!(
        (answer.body.as_slice(), header(&answer, "Content-Encoding")),
        (b"worker".as_slice(), None)
    );
}

#[test]
fn what_the_browser_has_is_not_sent_again() {
    let first = get("/", "/sw.js");
    let tag = header(&first, "ETag").unwrap();
    let known = format!("\"other\", W/{tag}");
    let again = answer(
        &folder(),
        "/",
        Ask {
            method: "GET",
            target: "/sw.js",
            known: &known,
            ..Ask::default()
        },
    );
    assert_eq!((again.status, again.body.len()), (304, 0));
    let changed = answer(
        &folder(),
        "/",
        Ask {
            method: "GET",
            target: "/sw.js",
            known: "\"other\"",
            ..Ask::default()
        },
    );
    assert_eq!(changed.status, 200);
}

#[test]
fn only_reading_is_allowed() {
    for method in ["POST", "PUT", "DELETE", "OPTIONS"] {
        let answer = answer(
            &folder(),
            "/",
            Ask {
                method,
                target: "/",
                ..Ask::default()
            },
        );
        assert_eq!(
            (answer.status, header(&answer, "Allow")),
            (405, Some("GET, HEAD"))
        );
    }
}
