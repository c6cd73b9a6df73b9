use super::*;

fn files(list: &[(&str, &str)]) -> Files {
    list.iter()
        .map(|(name, text)| ((*name).to_owned(), text.as_bytes().to_vec()))
        .collect()
}

fn site(list: &[(&str, &str)]) -> Site {
    assemble(&files(list), None).unwrap()
}

fn refused(list: &[(&str, &str)]) -> String {
    format!("{:#}", assemble(&files(list), None).unwrap_err())
}

fn text_of(site: &Site, name: &str) -> String {
    String::from_utf8(site.files[name].clone()).unwrap()
}

/// The served path of the one file whose source had this stem and extension.
fn served(site: &Site, stem: &str, extension: &str) -> String {
    let start = format!("{stem}-");
    let mut names = site
        .files
        .keys()
        .filter(|name| name.starts_with(&start) && name.ends_with(extension));
    let name = names
        .next()
        .unwrap_or_else(|| panic!("no {stem}*{extension} in {:?}", site.files.keys()));
    assert!(names.next().is_none());
    name.clone()
}

const WHOLE: [(&str, &str); 11] = [
    (
        "index.html",
        "<link href=\"@@styles.css@@\"><script type=module src=\"@@start.js@@\"></script>",
    ),
    ("styles.css", "@font-face{src:url(@@fonts/a.woff2@@)}"),
    ("fonts/a.woff2", "bytes @@build@@"),
    (
        "start.js",
        "import init from './@@app.js@@';init('@@app.wasm@@')",
    ),
    ("app.js", "import '@@not a token@@';import './@@join.js@@'"),
    (
        "join.js",
        "fetch('@@later-shed.wasm@@');fetch('@@later-horses-shed.wasm@@')",
    ),
    ("later-shed.wasm", "\0asm @@join.js@@"),
    ("later-horses-shed.wasm", "\0asm shared"),
    ("app.wasm", "\0asm @@build@@"),
    ("sw.js", "const BUILD='@@build@@';const FILES=@@files@@;"),
    ("reset.html", "plain"),
];

#[test]
fn names_carry_hashes_and_the_kept_ones_do_not() {
    let site = site(&WHOLE);
    let styles = served(&site, "styles", ".css");
    let start = served(&site, "start", ".js");
    assert!(is_hashed(&styles) && is_hashed(&start));
    assert!(site.files.contains_key("index.html") && site.files.contains_key("sw.js"));
    assert_eq!(
        text_of(&site, "index.html"),
        format!("<link href=\"{styles}\"><script type=module src=\"{start}\"></script>")
    );
    let font = served(&site, "fonts/a", ".woff2");
    assert_eq!(
        text_of(&site, &styles),
        format!("@font-face{{src:url({font})}}")
    );
    let (js, wasm) = (served(&site, "app", ".js"), served(&site, "app", ".wasm"));
    assert_eq!(
        text_of(&site, &start),
        format!("import init from './{js}';init('{wasm}')")
    );
}

#[test]
fn what_is_not_text_is_served_byte_for_byte() {
    let site = site(&WHOLE);
    for (stem, extension) in [
        ("fonts/a", ".woff2"),
        ("app", ".wasm"),
        ("later-shed", ".wasm"),
    ] {
        let source = WHOLE
            .iter()
            .find(|(name, _)| *name == format!("{stem}{extension}"));
        assert_eq!(
            Some(text_of(&site, &served(&site, stem, extension)).as_str()),
            source.map(|(_, text)| *text)
        );
    }
}

#[test]
fn the_script_of_the_first_part_names_the_join_and_that_the_later_parts() {
    let site = site(&WHOLE);
    let join = served(&site, "join", ".js");
    assert_eq!(
        text_of(&site, &served(&site, "app", ".js")),
        format!("import '@@not a token@@';import './{join}'")
    );
    assert_eq!(
        text_of(&site, &join),
        format!(
            "fetch('{}');fetch('{}')",
            served(&site, "later-shed", ".wasm"),
            served(&site, "later-horses-shed", ".wasm")
        )
    );
}

#[test]
fn the_worker_keeps_all_but_itself_and_the_way_out() {
    let site = site(&WHOLE);
    let worker = text_of(&site, "sw.js");
    let list = worker.split("FILES=").nth(1).unwrap().trim_end_matches(';');
    let list: Vec<String> = serde_json::from_str(list).unwrap();
    let expected: Vec<String> = site
        .files
        .keys()
        .filter(|name| !["sw.js", "reset.html"].contains(&name.as_str()))
        .cloned()
        .collect();
    assert_eq!(list, expected);
    assert!(worker.contains(&format!("BUILD='{}'", site.build)));
}

#[test]
fn a_change_of_content_changes_the_names_above_it_only() {
    let before = site(&WHOLE);
    let mut changed = WHOLE;
    changed[2].1 = "other bytes";
    let after = site(&changed);
    assert_ne!(
        served(&before, "styles", ".css"),
        served(&after, "styles", ".css")
    );
    assert_eq!(
        served(&before, "start", ".js"),
        served(&after, "start", ".js")
    );
    assert_ne!(before.build, after.build);
}

#[test]
fn a_stamp_is_another_build_of_the_same_files() {
    let one = assemble(&files(&WHOLE), None).unwrap();
    let two = assemble(&files(&WHOLE), Some("B")).unwrap();
    assert_ne!(one.build, two.build);
    assert_eq!(
        one.files.keys().collect::<Vec<_>>(),
        two.files.keys().collect::<Vec<_>>()
    );
    let differing: Vec<_> = one
        .files
        .iter()
        .filter(|(name, bytes)| two.files[*name] != **bytes)
        .collect();
    assert_eq!(
        differing.len(),
        1,
        "the worker alone carries the build's id"
    );
    assert_eq!(differing[0].0, "sw.js");
    assert_eq!(one, assemble(&files(&WHOLE), None).unwrap());
}

#[test]
fn an_inlined_file_stands_in_the_page_with_its_hash_and_is_not_served() {
    let site = site(&[
        (
            "index.html",
            "<meta content=\"script-src @@csp:boot.js@@\"><script>@@inline:boot.js@@</script>",
        ),
        ("boot.js", "go('@@app.wasm@@')"),
        ("app.wasm", "x"),
    ]);
    let wasm = served(&site, "app", ".wasm");
    let boot = format!("go('{wasm}')");
    let hash = STANDARD.encode(sha256(boot.as_bytes()));
    assert_eq!(
        text_of(&site, "index.html"),
        format!("<meta content=\"script-src 'sha256-{hash}'\"><script>{boot}</script>")
    );
    assert_eq!(site.files.len(), 2);
}

#[test]
fn a_file_that_is_inlined_here_and_named_there_is_served() {
    let site = site(&[
        ("index.html", "<style>@@inline:a.css@@</style>"),
        ("reset.html", "@@a.css@@"),
        ("a.css", "p{}"),
    ]);
    assert_eq!(text_of(&site, "reset.html"), served(&site, "a", ".css"));
}

#[test]
fn paths_are_relative_to_the_file_they_stand_in() {
    assert_eq!(relative("index.html", "styles.css"), "styles.css");
    assert_eq!(relative("css/a.css", "icons/b.svg"), "../icons/b.svg");
    assert_eq!(relative("css/a.css", "css/b.css"), "b.css");
    assert_eq!(relative("a/b/c.css", "a/d/e.svg"), "../d/e.svg");
    assert_eq!(relative("index.html", "icons/b.svg"), "icons/b.svg");
    assert_eq!(relative("a/b/c.css", "index.html"), "../../index.html");
}

#[test]
fn an_unknown_token_is_an_error_that_names_file_and_token() {
    let error = refused(&[("index.html", "@@style.css@@")]);
    assert!(
        error.contains("public/index.html") && error.contains("@@style.css@@"),
        "{error}"
    );
    let error = refused(&[("a.css", "@@inline:none.css@@")]);
    assert!(
        error.contains("public/a.css") && error.contains("@@inline:none.css@@"),
        "{error}"
    );
}

#[test]
fn a_circle_is_an_error() {
    let error = refused(&[("a.css", "@@b.css@@"), ("b.css", "@@a.css@@")]);
    assert!(error.contains("a.css -> b.css -> a.css"), "{error}");
    let error = refused(&[("index.html", "@@inline:index.html@@")]);
    assert!(error.contains("circle"), "{error}");
}

#[test]
fn kept_files_may_name_each_other() {
    let site = site(&[("index.html", "@@sw.js@@"), ("sw.js", "@@index.html@@")]);
    assert_eq!(text_of(&site, "index.html"), "sw.js");
    assert_eq!(text_of(&site, "sw.js"), "index.html");
}

#[test]
fn the_list_cannot_stand_in_a_hashed_file() {
    let error = refused(&[("list.js", "@@files@@")]);
    assert!(
        error.contains("public/list.js") && error.contains("@@files@@"),
        "{error}"
    );
}

#[test]
fn a_text_file_that_is_not_text_is_an_error() {
    let sources = Files::from([("a.css".to_owned(), vec![0xff])]);
    assert!(format!("{:#}", assemble(&sources, None).unwrap_err()).contains("public/a.css"));
}

#[test]
fn hashed_names_are_told_from_others() {
    assert!(is_hashed("icons/leaf-0123456789.svg"));
    for name in [
        "index.html",
        "sw.js",
        "icon-192.png",
        "a-0123456789abc.js",
        "a-012345678g.js",
        "a-ABCDEF0123.js",
    ] {
        assert!(!is_hashed(name), "{name}");
    }
    assert!(is_kept("LICENSE-MIT.txt") && is_kept("licences.txt") && !is_kept("styles.css"));
}
