//! Every constant of the trade is listed, has its work, its place in it and its mark.

use crate::hold;
use crate::rooms::{ROOMS, room_of};
use crate::walk::{File, files};
use proc_macro2::{TokenStream, TokenTree};
use std::collections::{BTreeMap, BTreeSet};
use tussock_core::sources::{Constant, Mark, Work};

/// The constants and the lists of a room's `published.rs`, by name.
#[derive(Default)]
struct Found {
    /// Constants written out.
    constants: BTreeSet<String>,
    /// Constants without a source.
    bare: Vec<String>,
    /// What `list_constants!` lists.
    listed: Vec<String>,
    /// Macros of the file that write constants: whether each lists them too.
    tables: Vec<(String, bool)>,
    /// Whether such a macro is called.
    has_table: bool,
}

fn is_published(ty: &syn::Type) -> bool {
    matches!(ty, syn::Type::Path(path)
        if path.path.segments.last().is_some_and(|s| s.ident == "Published"))
}

fn idents(tokens: TokenStream) -> Vec<String> {
    tokens
        .into_iter()
        .filter_map(|token| match token {
            TokenTree::Ident(ident) => Some(ident.to_string()),
            _ => None,
        })
        .collect()
}

/// The words of a macro, groups included.
pub(crate) fn idents_deep(tokens: TokenStream) -> Vec<String> {
    tokens
        .into_iter()
        .flat_map(|token| match token {
            TokenTree::Ident(ident) => vec![ident.to_string()],
            TokenTree::Group(group) => idents_deep(group.stream()),
            _ => Vec::new(),
        })
        .collect()
}

fn read(file: &File) -> Found {
    let mut found = Found::default();
    for item in file.syntax().items {
        match item {
            syn::Item::Const(item) if is_published(&item.ty) => {
                found.constants.insert(item.ident.to_string());
            }
            syn::Item::Const(item) => found.bare.push(item.ident.to_string()),
            syn::Item::Macro(item) if item.mac.path.is_ident("list_constants") => {
                found.listed.extend(idents(item.mac.tokens));
            }
            syn::Item::Macro(item) => {
                let (Some(name), body) = (item.ident, idents_deep(item.mac.tokens)) else {
                    found.has_table = true;
                    continue;
                };
                if body.iter().any(|word| word == "Published") {
                    let lists = body.iter().any(|w| w == "list_constants" || w == "row");
                    found.tables.push((name.to_string(), lists));
                }
            }
            _ => {}
        }
    }
    found
}

/// What is wrong with a `published.rs`: a constant that is not in its list, twice in it, or that has no source at all.
fn faults_in(file: &File) -> Vec<String> {
    let found = read(file);
    let mut faults = Vec::new();
    let mut seen = BTreeSet::new();
    for name in &found.listed {
        if !seen.insert(name.clone()) {
            faults.push(format!("{}: {name} is listed twice", file.path));
        }
    }
    for name in found.constants.difference(&seen) {
        faults.push(format!("{}: {name} is not in list_constants!", file.path));
    }
    for (name, _) in found.tables.iter().filter(|(_, lists)| !lists) {
        faults.push(format!(
            "{}: {name}! writes constants and lists none",
            file.path
        ));
    }
    for name in &found.bare {
        faults.push(format!("{}: {name} is no Published", file.path));
    }
    faults
}

/// What is wrong with the joined list itself.
fn faults_of(constants: &[Constant]) -> Vec<String> {
    let mut faults = Vec::new();
    let mut ids = BTreeSet::new();
    for constant in constants {
        let id = constant.id;
        if !ids.insert(id) {
            faults.push(format!("{id}: the id stands twice"));
        }
        match id.split_once('.') {
            Some((room, name)) if ROOMS.contains(&room) && is_name(name) => {}
            _ => faults.push(format!("{id}: the id is not room.name")),
        }
        if constant.place.trim().is_empty() {
            faults.push(format!("{id}: it has no place in its work"));
        }
        if (constant.mark == Mark::Ours) != (constant.work == Work::Tussock) {
            faults.push(format!(
                "{id}: what is ours is marked ours, and nothing else"
            ));
        }
        if constant.mark == Mark::CommonPractice && constant.work != Work::CommonPractice {
            faults.push(format!("{id}: common practice has no work"));
        }
        // What the trade passes on and nobody looked up is from memory, which says less than common practice.
        if constant.work == Work::CommonPractice
            && !matches!(constant.mark, Mark::CommonPractice | Mark::FromMemory)
        {
            faults.push(format!(
                "{id}: without a work it is not {:?}",
                constant.mark
            ));
        }
        if constant.work == Work::ExactByDefinition
            && !matches!(constant.mark, Mark::Published | Mark::WorkedOut)
        {
            faults.push(format!("{id}: what is exact is published or worked out"));
        }
    }
    faults
}

fn is_name(name: &str) -> bool {
    !name.is_empty()
        && name
            .chars()
            .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_' || c == '.')
}

fn published_files() -> Vec<File> {
    files("core/src", &["rs"])
        .into_iter()
        .filter(|file| file.name() == "published.rs" && room_of(&file.path) != Some("sources"))
        .collect()
}

/// How many constants the joined list holds of each room.
fn joined() -> BTreeMap<&'static str, usize> {
    let mut rooms = BTreeMap::new();
    for constant in tussock_core::constants() {
        let room = constant.id.split('.').next().unwrap_or_default();
        *rooms.entry(room).or_default() += 1;
    }
    rooms
}

#[test]
fn every_constant_stands_in_its_list() {
    let all: Vec<String> = published_files()
        .iter()
        .filter(|file| room_of(&file.path) != Some("units"))
        .flat_map(faults_in)
        .collect();
    hold(&all);
}

#[test]
fn the_joined_list_holds_every_constant_of_every_room() {
    let joined = joined();
    // A room may keep its constants in several lists.
    let mut rooms: BTreeMap<String, (usize, bool)> = BTreeMap::new();
    for file in published_files() {
        if let Some(room) = room_of(&file.path).filter(|room| *room != "units") {
            let found = read(&file);
            let (own, has_table) = rooms.entry(room.to_owned()).or_default();
            *own += found.constants.len();
            *has_table |= found.has_table;
        }
    }
    let faults: Vec<String> = rooms
        .into_iter()
        .filter_map(|(room, (own, has_table))| {
            let there = joined.get(room.as_str()).copied().unwrap_or(0);
            let held = if has_table { own < there } else { own == there };
            (!held).then(|| {
                format!("{room}: {own} constants, {there} in the joined list with its ids")
            })
        })
        .collect();
    hold(&faults);
}

/// The conversions are bare numbers, since `units` stands before `sources`; `sources` lists them. Those of time are
/// whole numbers of the calendar and are not listed.
#[test]
fn every_conversion_of_the_units_is_listed() {
    let ids: BTreeSet<&str> = tussock_core::constants().iter().map(|c| c.id).collect();
    let file = files("core/src/units", &["rs"])
        .into_iter()
        .find(|file| file.name() == "published.rs")
        .expect("units has its conversions");
    let mut faults = Vec::new();
    for item in file.syntax().items {
        let syn::Item::Const(item) = item else {
            continue;
        };
        let is_float = matches!(&*item.ty, syn::Type::Path(p) if p.path.is_ident("f64"));
        let id = format!("units.{}", item.ident.to_string().to_lowercase());
        if is_float && !ids.contains(id.as_str()) {
            faults.push(format!("{}: {id} is not listed by sources", file.path));
        }
    }
    hold(&faults);
}

#[test]
fn every_constant_has_a_work_a_place_and_a_fitting_mark() {
    hold(&faults_of(&tussock_core::constants()));
}

#[cfg(test)]
mod samples {
    use super::*;

    fn constant(id: &'static str, work: Work, mark: Mark) -> Constant {
        Constant {
            id,
            value: "1".to_owned(),
            unit: "kg",
            work,
            place: "table 1",
            mark,
        }
    }

    #[test]
    fn an_unlisted_constant_is_found() {
        let faults = |text: &str| faults_in(&File::sample("core/src/soak/published.rs", text));
        assert_eq!(
            faults("pub const A: Published<f64> = x; list_constants![A];"),
            Vec::<String>::new()
        );
        let table = "macro_rules! t { () => { pub const A: Published<u8> = x; list_constants![A]; } } t!();";
        assert_eq!(faults(table), Vec::<String>::new());
        for text in [
            "pub const A: Published<f64> = x; list_constants![];",
            "pub const A: Published<f64> = x;",
            "pub const A: Published<f64> = x; list_constants![A, A];",
            "pub const A: f64 = 3.0; list_constants![];",
            "pub const A: sources::Published<f64> = x; list_constants![B];",
            "macro_rules! t { () => { pub const A: Published<u8> = x; } } t!();",
        ] {
            assert_eq!(faults(text).len(), 1, "{text}");
        }
    }

    #[test]
    fn a_constant_without_a_fitting_source_is_found() {
        let good = constant("soak.drain", Work::Longland2011, Mark::Published);
        assert_eq!(faults_of(std::slice::from_ref(&good)), Vec::<String>::new());
        assert_eq!(faults_of(&[good.clone(), good.clone()]).len(), 1);
        for bad in [
            constant("drain", Work::Longland2011, Mark::Published),
            constant("barn.drain", Work::Longland2011, Mark::Published),
            constant("soak.", Work::Longland2011, Mark::Published),
            constant("soak.drain", Work::Tussock, Mark::Published),
            constant("soak.drain", Work::Longland2011, Mark::Ours),
            constant("soak.drain", Work::CommonPractice, Mark::Published),
            constant("soak.drain", Work::Longland2011, Mark::CommonPractice),
            constant("soak.drain", Work::ExactByDefinition, Mark::FromMemory),
            Constant { place: " ", ..good },
        ] {
            assert_eq!(faults_of(std::slice::from_ref(&bad)).len(), 1, "{bad:?}");
        }
    }
}
