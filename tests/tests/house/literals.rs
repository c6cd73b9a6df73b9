//! Every number of the trade stands in a `published.rs`, with its source.
//!
//! Elsewhere in the core a numeric literal is 0, 1, 2, 10, 100 or 1000, or stands under a comment `// numeric:` that
//! says why it is no constant of the trade. The comment stands directly above the line of the literal, or above the
//! statement, match arm, field, constant or function that holds it; above an `impl` or a module it covers nothing.
//! A comment that covers no literal is a fault too. Tests and array lengths are free.

use crate::hold;
use crate::walk::{File, files};
use proc_macro2::{TokenStream, TokenTree};
use std::collections::BTreeSet;
use syn::spanned::Spanned;
use syn::visit::{self, Visit};

const FREE: [f64; 6] = [0.0, 1.0, 2.0, 10.0, 100.0, 1000.0];
const MARK: &str = "// numeric:";

/// Whether an item is compiled for tests only.
pub(crate) fn is_test_only(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("cfg")
            && attribute
                .parse_args::<syn::Path>()
                .is_ok_and(|condition| condition.is_ident("test"))
    })
}

/// The attributes of an item, where it can have any.
pub(crate) fn attributes(item: &syn::Item) -> &[syn::Attribute] {
    match item {
        syn::Item::Const(i) => &i.attrs,
        syn::Item::Enum(i) => &i.attrs,
        syn::Item::Fn(i) => &i.attrs,
        syn::Item::Impl(i) => &i.attrs,
        syn::Item::Macro(i) => &i.attrs,
        syn::Item::Mod(i) => &i.attrs,
        syn::Item::Static(i) => &i.attrs,
        syn::Item::Struct(i) => &i.attrs,
        syn::Item::Trait(i) => &i.attrs,
        syn::Item::Type(i) => &i.attrs,
        syn::Item::Use(i) => &i.attrs,
        _ => &[],
    }
}

/// Where a test-only module lies (`#[cfg(test)] mod name;`, with or without `#[path]`): its file, and the folder of its
/// own modules.
pub(crate) fn test_only_places(file: &File, syntax: &syn::File) -> Vec<String> {
    let (folder, name) = file.path.rsplit_once('/').unwrap_or(("", &file.path));
    let own = match name {
        "mod.rs" | "lib.rs" | "main.rs" => folder.to_owned(),
        _ => file.path.trim_end_matches(".rs").to_owned(),
    };
    let mut found = Vec::new();
    for item in &syntax.items {
        let syn::Item::Mod(module) = item else {
            continue;
        };
        if module.content.is_some() || !is_test_only(&module.attrs) {
            continue;
        }
        let given = module.attrs.iter().find_map(|a| match &a.meta {
            syn::Meta::NameValue(pair) if pair.path.is_ident("path") => match &pair.value {
                syn::Expr::Lit(syn::ExprLit {
                    lit: syn::Lit::Str(text),
                    ..
                }) => Some(text.value()),
                _ => None,
            },
            _ => None,
        });
        if let Some(path) = given {
            found.push(format!("{folder}/{path}"));
        } else {
            found.push(format!("{own}/{}.rs", module.ident));
            found.push(format!("{own}/{}", module.ident));
        }
    }
    found
}

/// Walks a file with the starting lines of all that a comment may stand above.
struct Finder<'a> {
    lines: Vec<&'a str>,
    /// The first lines of the enclosing functions, constants, statements, arms and fields.
    open: Vec<usize>,
    /// Lines that hold a `// numeric:` comment which covers a literal.
    used: BTreeSet<usize>,
    /// Lines of test-only items.
    tests: Vec<(usize, usize)>,
    faults: Vec<(usize, String)>,
}

impl Finder<'_> {
    fn line(&self, number: usize) -> &str {
        number
            .checked_sub(1)
            .and_then(|index| self.lines.get(index))
            .map_or("", |line| line.trim())
    }

    /// The line of the `// numeric:` comment directly above a line, or among the comments and attributes it starts
    /// with.
    fn mark_above(&self, start: usize) -> Option<usize> {
        let above = (1..start)
            .rev()
            .take_while(|number| self.line(*number).starts_with("//"));
        let below = (start..=self.lines.len()).take_while(|number| {
            let line = self.line(*number);
            line.starts_with("//") || line.starts_with("#[")
        });
        above.chain(below).find(|n| self.line(*n).starts_with(MARK))
    }

    fn within(&mut self, start: usize, walk: impl FnOnce(&mut Self)) {
        self.open.push(start);
        walk(self);
        self.open.pop();
    }

    fn number(&mut self, line: usize, text: &str, value: Option<f64>) {
        #[allow(clippy::float_cmp, reason = "literals are compared as written")]
        if value.is_some_and(|v| FREE.contains(&v)) {
            return;
        }
        let starts = self.open.iter().rev().copied();
        let marks: Vec<usize> = std::iter::once(line)
            .chain(starts)
            .filter_map(|start| self.mark_above(start))
            .collect();
        match marks.first() {
            Some(mark) => {
                self.used.insert(*mark);
            }
            None => self.faults.push((line, text.to_owned())),
        }
    }

    /// Numbers inside a macro, whose body is no syntax tree. A number after a single point is a field: `.0`.
    fn tokens(&mut self, tokens: TokenStream) {
        let mut points = 0;
        for token in tokens {
            match token {
                TokenTree::Group(group) => self.tokens(group.stream()),
                TokenTree::Literal(literal) if points != 1 => {
                    let line = literal.span().start().line;
                    match syn::Lit::new(literal) {
                        syn::Lit::Int(int) => self.int(line, &int),
                        syn::Lit::Float(float) => self.float(line, &float),
                        _ => {}
                    }
                }
                TokenTree::Punct(punct) if punct.as_char() == '.' => {
                    points += 1;
                    continue;
                }
                _ => {}
            }
            points = 0;
        }
    }

    fn int(&mut self, line: usize, int: &syn::LitInt) {
        #[allow(clippy::cast_precision_loss, reason = "compared with small numbers")]
        let value = int.base10_parse::<u128>().ok().map(|v| v as f64);
        self.number(line, &int.to_string(), value);
    }

    fn float(&mut self, line: usize, float: &syn::LitFloat) {
        self.number(line, &float.to_string(), float.base10_parse().ok());
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item(&mut self, item: &'ast syn::Item) {
        let span = item.span();
        if is_test_only(attributes(item)) {
            self.tests.push((span.start().line, span.end().line));
            return;
        }
        match item {
            syn::Item::Mod(_) | syn::Item::Impl(_) | syn::Item::Trait(_) => {
                visit::visit_item(self, item);
            }
            _ => self.within(span.start().line, |f| visit::visit_item(f, item)),
        }
    }
    fn visit_impl_item(&mut self, item: &'ast syn::ImplItem) {
        self.within(item.span().start().line, |f| {
            visit::visit_impl_item(f, item);
        });
    }
    fn visit_trait_item(&mut self, item: &'ast syn::TraitItem) {
        self.within(item.span().start().line, |f| {
            visit::visit_trait_item(f, item);
        });
    }
    fn visit_stmt(&mut self, stmt: &'ast syn::Stmt) {
        self.within(stmt.span().start().line, |f| visit::visit_stmt(f, stmt));
    }
    fn visit_arm(&mut self, arm: &'ast syn::Arm) {
        self.within(arm.span().start().line, |f| visit::visit_arm(f, arm));
    }
    fn visit_field(&mut self, field: &'ast syn::Field) {
        self.within(field.span().start().line, |f| visit::visit_field(f, field));
    }
    fn visit_field_value(&mut self, field: &'ast syn::FieldValue) {
        self.within(field.span().start().line, |f| {
            visit::visit_field_value(f, field);
        });
    }
    fn visit_variant(&mut self, variant: &'ast syn::Variant) {
        self.within(variant.span().start().line, |f| {
            visit::visit_variant(f, variant);
        });
    }
    fn visit_type_array(&mut self, array: &'ast syn::TypeArray) {
        self.visit_type(&array.elem);
    }
    fn visit_expr_repeat(&mut self, repeat: &'ast syn::ExprRepeat) {
        self.visit_expr(&repeat.expr);
    }
    fn visit_attribute(&mut self, _: &'ast syn::Attribute) {}
    fn visit_lit_int(&mut self, int: &'ast syn::LitInt) {
        self.int(int.span().start().line, int);
    }
    fn visit_lit_float(&mut self, float: &'ast syn::LitFloat) {
        self.float(float.span().start().line, float);
    }
    fn visit_macro(&mut self, call: &'ast syn::Macro) {
        self.tokens(call.tokens.clone());
    }
}

/// The literals of a file that have no source and no reason, and the reasons that cover no literal.
fn faults(file: &File, syntax: &syn::File) -> Vec<String> {
    let mut finder = Finder {
        lines: file.text.lines().collect(),
        open: Vec::new(),
        used: BTreeSet::new(),
        tests: Vec::new(),
        faults: Vec::new(),
    };
    finder.visit_file(syntax);
    let mut faults: Vec<String> = finder
        .faults
        .iter()
        .map(|(line, text)| format!("{}:{line} {text}", file.path))
        .collect();
    for number in 1..=finder.lines.len() {
        let Some(reason) = finder.line(number).strip_prefix(MARK) else {
            continue;
        };
        let in_tests = finder
            .tests
            .iter()
            .any(|(from, to)| *from <= number && number <= *to);
        if reason.trim().is_empty() {
            faults.push(format!("{}:{number} `{MARK}` gives no reason", file.path));
        } else if !in_tests && !finder.used.contains(&number) {
            faults.push(format!("{}:{number} `{MARK}` covers no literal", file.path));
        }
    }
    faults
}

#[test]
fn no_number_of_the_trade_stands_without_its_source() {
    let files: Vec<(File, syn::File)> = files("core/src", &["rs"])
        .into_iter()
        .map(|file| {
            let syntax = file.syntax();
            (file, syntax)
        })
        .collect();
    let tests: Vec<String> = files
        .iter()
        .flat_map(|(file, syntax)| test_only_places(file, syntax))
        .collect();
    let all: Vec<String> = files
        .iter()
        .filter(|(file, _)| file.name() != "published.rs" && !file.within(&tests))
        .flat_map(|(file, syntax)| faults(file, syntax))
        .collect();
    hold(&all);
}

#[cfg(test)]
mod samples {
    use super::*;

    fn found(text: &str) -> Vec<String> {
        let file = File::sample("f.rs", text);
        faults(&file, &file.syntax())
    }

    #[test]
    fn a_bare_number_is_found_wherever_it_hides() {
        for text in [
            "fn f() -> f64 { 3.5 }",
            "const A: u8 = 3;",
            "fn f(x: u8) -> bool { x < 3 }",
            "fn f(x: u8) -> bool { match x { 3 => true, _ => false } }",
            "fn f() { let _ = vec![0.5]; }",
            "fn f() -> i64 { -7 }",
            "fn f() -> u8 { 0x0f }",
            "enum E { A = 3 }",
            "fn f(x: u8) -> bool { matches!(x, 0..3) }",
            "mod m { fn f() -> u8 { 4 } }",
            "macro_rules! m { () => { 5.5 } }",
            "impl S { const A: f64 = 4.0; }",
            "// numeric: covers nothing here\nimpl S {\n fn a() {}\n fn f() -> u8 { 4 }\n}",
            "// numeric:\nconst A: u8 = 3;",
            "// numeric: parted\n\nconst A: u8 = 3;",
        ] {
            assert!(!found(text).is_empty(), "{text}");
        }
        assert_eq!(
            found("fn f() -> f64 {\n    3.5\n}"),
            ["f.rs:2 3.5".to_owned()]
        );
    }

    #[test]
    fn what_is_free_or_says_why_passes() {
        for text in [
            "fn f() -> f64 { 0.0 + 1.0 + 2.0 + 10.0 + 100.0 + 1000.0 + 1e3 }",
            "fn f(x: (u8, u8, u8, u8)) -> u8 { x.3 }",
            "fn f(x: (u8, u8, u8, u8)) { assert_eq!(x.3, x.2); }",
            "struct S([u8; 36]);",
            "fn f() { let _ = [0_u8; 36]; }",
            "/// At 3.5 kg.\nfn f() { println!(\"3.5 {:.3}\", 1); }",
            "#[cfg(test)]\nmod tests { fn f() -> f64 { 3.5 } }",
            "// numeric: a check digit\nconst A: u8 = 3;",
            "/// Doc.\n// numeric: a check digit\n#[must_use]\nfn f() -> u8 { 3 }",
            "fn f() {\n    // numeric: why\n    let x = 3;\n}",
            "fn f() {\n    g(\n        1,\n        // numeric: why\n        3,\n    );\n}",
            "fn f(x: u8) -> u8 {\n    match x {\n        // numeric: why\n        3 => 1,\n        _ => 0,\n    }\n}",
            "fn f() -> S {\n    S {\n        // numeric: why\n        // and more\n        a: 3,\n    }\n}",
        ] {
            assert_eq!(found(text), Vec::<String>::new(), "{text}");
        }
    }

    #[test]
    fn a_reason_that_covers_nothing_is_a_fault() {
        assert!(!found("// numeric: gone\nconst A: u8 = 1;").is_empty());
        assert!(found("#[cfg(test)]\nmod t {\n// numeric: x\nconst A: u8 = 1;\n}").is_empty());
    }

    #[test]
    fn a_test_only_file_is_left_out() {
        let file = File::sample(
            "core/src/soak/mod.rs",
            "#[cfg(test)]\nmod tests;\n#[cfg(test)]\n#[path = \"x_tests.rs\"]\nmod x;\nmod y;",
        );
        assert_eq!(
            test_only_places(&file, &file.syntax()),
            [
                "core/src/soak/tests.rs",
                "core/src/soak/tests",
                "core/src/soak/x_tests.rs"
            ]
        );
        let places = test_only_places(&file, &file.syntax());
        for (path, is_test) in [
            ("core/src/soak/tests.rs", true),
            ("core/src/soak/tests/mod.rs", true),
            ("core/src/soak/tests/cold.rs", true),
            ("core/src/soak/tests_of_hay.rs", false),
            ("core/src/soak/y.rs", false),
        ] {
            assert_eq!(File::sample(path, "").within(&places), is_test, "{path}");
        }
    }
}
