//! The rooms of the core stand in the order of the loop, and each uses those before it only.

use crate::hold;
use crate::walk::{File, files, text};
use proc_macro2::{TokenStream, TokenTree};
use syn::visit::{self, Visit};

/// The rooms in their order.
pub(crate) const ROOMS: [&str; 16] = [
    "units", "sources", "animal", "assess", "limits", "forage", "soak", "ration", "graze", "work",
    "day", "progress", "plan", "safety", "round", "log",
];

/// The room of a file of the core: the folder under `core/src`, or none for `lib.rs`.
pub(crate) fn room_of(path: &str) -> Option<&str> {
    path.strip_prefix("core/src/")?
        .split_once('/')
        .map(|(room, _)| room)
}

fn rank(room: &str) -> Option<usize> {
    ROOMS.iter().position(|name| *name == room)
}

/// How many modules deep a file of the core lies: `core/src/soak/mod.rs` is one, `core/src/soak/times.rs` two.
fn depth(path: &str) -> usize {
    let inside = path.strip_prefix("core/src/").unwrap_or(path);
    inside.split('/').filter(|part| *part != "mod.rs").count()
}

/// Collects the first names under the root of the crate that a file speaks of, with their lines.
struct Uses {
    depth: usize,
    found: Vec<(usize, String)>,
}

impl Uses {
    /// A path in segments: the name directly under the crate's root, when it leads there.
    fn path(&mut self, line: usize, segments: &[String]) {
        let supers = segments.iter().take_while(|s| *s == "super").count();
        let from = match segments.first().map(String::as_str) {
            Some("crate") => 1,
            Some("super") if supers == self.depth => supers,
            _ => return,
        };
        if let Some(name) = segments.get(from) {
            self.found.push((line, name.clone()));
        }
    }

    fn tree(&mut self, before: &[String], tree: &syn::UseTree) {
        let with = |ident: &syn::Ident| {
            let mut path = before.to_vec();
            path.push(ident.to_string());
            path
        };
        match tree {
            syn::UseTree::Path(part) => self.tree(&with(&part.ident), &part.tree),
            syn::UseTree::Name(part) => {
                self.path(part.ident.span().start().line, &with(&part.ident));
            }
            syn::UseTree::Rename(part) => {
                self.path(part.ident.span().start().line, &with(&part.ident));
            }
            syn::UseTree::Glob(part) => {
                let line = part.star_token.spans[0].start().line;
                let mut path = before.to_vec();
                path.push("*".to_owned());
                self.path(line, &path);
            }
            syn::UseTree::Group(group) => {
                for item in &group.items {
                    self.tree(before, item);
                }
            }
        }
    }

    fn tokens(&mut self, tokens: TokenStream) {
        let mut path: Vec<String> = Vec::new();
        let mut line = 0;
        let mut colons = 0;
        for token in tokens {
            match token {
                TokenTree::Ident(ident) => {
                    if colons != 2 {
                        self.path(line, &path);
                        path.clear();
                    }
                    line = ident.span().start().line;
                    path.push(ident.to_string());
                    colons = 0;
                }
                TokenTree::Punct(punct) if punct.as_char() == ':' => colons += 1,
                TokenTree::Group(group) => {
                    self.tokens(group.stream());
                    colons = 0;
                }
                _ => colons = 0,
            }
        }
        self.path(line, &path);
    }
}

impl<'ast> Visit<'ast> for Uses {
    fn visit_item_mod(&mut self, module: &'ast syn::ItemMod) {
        self.depth += 1;
        visit::visit_item_mod(self, module);
        self.depth -= 1;
    }
    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        self.tree(&[], &item.tree);
    }
    fn visit_path(&mut self, path: &'ast syn::Path) {
        let segments: Vec<String> = path.segments.iter().map(|s| s.ident.to_string()).collect();
        let line = path
            .segments
            .first()
            .map_or(0, |s| s.ident.span().start().line);
        self.path(line, &segments);
        visit::visit_path(self, path);
    }
    fn visit_visibility(&mut self, _: &'ast syn::Visibility) {}
    fn visit_attribute(&mut self, _: &'ast syn::Attribute) {}
    fn visit_macro(&mut self, call: &'ast syn::Macro) {
        self.tokens(call.tokens.clone());
    }
}

fn faults(file: &File) -> Vec<String> {
    let Some(room) = room_of(&file.path) else {
        return Vec::new();
    };
    let Some(own) = rank(room) else {
        return vec![format!("{}: {room} is no room of the core", file.path)];
    };
    let mut uses = Uses {
        depth: depth(&file.path),
        found: Vec::new(),
    };
    uses.visit_file(&file.syntax());
    uses.found
        .iter()
        .filter_map(|(line, name)| match rank(name) {
            Some(other) if other <= own => None,
            Some(_) => Some(format!(
                "{}:{line} {room} may not use {name}, which comes after it",
                file.path
            )),
            None => Some(format!(
                "{}:{line} {room} uses crate::{name}, which is no room",
                file.path
            )),
        })
        .collect()
}

/// The rooms in the order in which a module's doc comment names them in backticks.
fn named_in(doc: &str) -> Vec<&str> {
    doc.lines()
        .filter_map(|line| line.trim_start().strip_prefix("//!"))
        .flat_map(|line| line.split('`').skip(1).step_by(2))
        .filter(|name| rank(name).is_some())
        .collect()
}

#[test]
fn each_room_uses_those_before_it_only() {
    let all: Vec<String> = files("core/src", &["rs"]).iter().flat_map(faults).collect();
    hold(&all);
}

#[test]
fn the_door_of_the_core_names_the_rooms_in_their_order() {
    let lib = text("core/src/lib.rs");
    assert_eq!(named_in(&lib), ROOMS);
}

#[test]
fn every_folder_of_the_core_is_an_open_room_with_a_door_that_says_what_it_is() {
    let lib = File::sample("core/src/lib.rs", &text("core/src/lib.rs"));
    let open: Vec<String> = lib
        .syntax()
        .items
        .iter()
        .filter_map(|item| match item {
            syn::Item::Mod(module) => Some(module.ident.to_string()),
            _ => None,
        })
        .collect();
    let mut faults = Vec::new();
    for name in &open {
        if rank(name).is_none() {
            faults.push(format!("core/src/lib.rs: {name} is no room"));
        }
        if !text(&format!("core/src/{name}/mod.rs")).starts_with("//! ") {
            faults.push(format!("core/src/{name}/mod.rs: the door has no doc"));
        }
    }
    for file in files("core/src", &["rs"]) {
        match room_of(&file.path) {
            None if file.path == "core/src/lib.rs" => {}
            Some(room) if open.iter().any(|name| name == room) => {}
            _ => faults.push(format!("{}: stands in no open room", file.path)),
        }
    }
    hold(&faults);
}

/// Lines outside the room `log` that name serde: the domain is not what is stored.
fn stored(file: &File) -> Vec<String> {
    if room_of(&file.path) == Some("log") {
        return Vec::new();
    }
    file.code_lines()
        .filter(|(_, line)| {
            ["serde", "Serialize", "Deserialize"]
                .iter()
                .any(|w| line.contains(w))
        })
        .map(|(number, line)| format!("{}:{number} {}", file.path, line.trim()))
        .collect()
}

#[test]
fn only_the_log_knows_how_things_are_stored() {
    let all: Vec<String> = files("core/src", &["rs"]).iter().flat_map(stored).collect();
    hold(&all);
}

#[cfg(test)]
mod samples {
    use super::*;

    fn found(path: &str, text: &str) -> usize {
        faults(&File::sample(path, text)).len()
    }

    #[test]
    fn a_look_ahead_is_found_however_it_is_written() {
        for text in [
            "use crate::plan::Draft;",
            "use crate::{units, plan::Draft};",
            "use crate::plan as p;",
            "use crate::*;",
            "use super::super::plan::Draft;",
            "fn f() -> crate::plan::Draft { todo() }",
            "fn f() { crate::plan::draw(); }",
            "fn f() { assert!(crate::plan::ok()); }",
            "fn f() { g!(x, [crate::plan::ok(1)]); }",
            "mod tests { use super::super::super::plan::Draft; }",
            "use crate::nowhere::A;",
        ] {
            assert_eq!(found("core/src/soak/times.rs", text), 1, "{text}");
        }
        assert_eq!(
            found("core/src/units/mod.rs", "use crate::sources::Work;"),
            1
        );
        assert_eq!(found("core/src/barn/mod.rs", ""), 1);
    }

    #[test]
    fn a_stored_domain_type_is_found() {
        let text = "#[derive(Serialize)]\nstruct Animal;";
        assert_eq!(
            stored(&File::sample("core/src/animal/kind.rs", text)).len(),
            1
        );
        assert!(stored(&File::sample("core/src/log/kind.rs", text)).is_empty());
    }

    #[test]
    fn a_look_back_passes() {
        for text in [
            "use crate::{units::Span, sources, animal::{Kind, Age}};",
            "use super::plan::Inner;",
            "use super::super::units::Span;",
            "pub(crate) use inner::list;",
            "fn f() { g!(crate::units::Span, super::plan); }",
            "use crate::soak::published::A;",
        ] {
            assert_eq!(found("core/src/soak/times.rs", text), 0, "{text}");
        }
    }
}
