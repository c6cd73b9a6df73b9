//! Cuts the built wasm in parts: what the first screens need, and what is fetched behind them, by place.
//!
//! The app marks where it may be cut (`app/src/places/later.rs`). The cut is made before wasm-bindgen, which sees only
//! the first part; the script that fetches and joins the others is written with it. What several places need is cut off
//! as a part of its own, so that nothing is there twice, and comes with the first of them.

use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::fmt::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result, anyhow, bail};
use wasm_split_cli_support::{Options, transform};

use crate::folders::files_under;

/// The first part, for wasm-bindgen.
pub(crate) const FIRST: &str = "first.wasm";
/// How the names of the parts begin that are fetched later; the places that need one follow, joined by dashes.
pub(crate) const LATER: &str = "later-";
/// The script between the first part and the others.
pub(crate) const JOIN: &str = "join.js";

/// Cuts `wasm` and writes the parts and the script between them into `out`, an empty folder.
///
/// # Errors
/// When the tool fails, or writes something else than it says.
pub(crate) fn cut(wasm: &[u8], out: &Path) -> Result<()> {
    let (first, link) = (out.join(FIRST), imported());
    let mut options = Options::new(wasm);
    options.output_dir = out;
    options.main_out_path = &first;
    options.link_name = &link;
    options.main_module = "./app.js";
    let made = transform(options).map_err(|error| anyhow!("the wasm cannot be cut: {error:#}"))?;
    let names = names(&made.prefetch_map);
    let mut told: Vec<_> = names.keys().map(|made| out.join(made)).collect();
    let mut written = made.split_modules;
    told.sort();
    written.sort();
    if written.is_empty() || written != told {
        bail!("the parts {told:?} were expected, not {written:?}");
    }
    for (made, name) in &names {
        std::fs::rename(out.join(made), out.join(name))?;
    }
    let script = std::fs::read_to_string(out.join(JOIN)).context("cannot read the join script")?;
    std::fs::write(out.join(JOIN), join(&script, &names)?)?;
    Ok(())
}

/// The names of the parts in a folder that are fetched later.
///
/// # Errors
/// When the folder cannot be read.
pub(crate) fn later(out: &Path) -> Result<Vec<String>> {
    let mut names = files_under(out)?;
    names.retain(|name| name.starts_with(LATER));
    Ok(names)
}

/// The name of each part by the file that the tool made, from the files that each place needs: it numbers those that
/// several need.
fn names(needs: &HashMap<String, Vec<String>>) -> BTreeMap<String, String> {
    let mut places = BTreeMap::<&str, BTreeSet<&str>>::new();
    for (place, files) in needs {
        for file in files {
            places.entry(file).or_default().insert(place);
        }
    }
    let name = |places: BTreeSet<&str>| {
        let places: Vec<&str> = places.into_iter().collect();
        format!("{LATER}{}.wasm", places.join("-"))
    };
    places
        .into_iter()
        .map(|(made, places)| (format!("{made}.wasm"), name(places)))
        .collect()
}

/// The join script as the wasm imports it.
fn imported() -> String {
    format!("./{JOIN}")
}

/// The join script as it is served.
///
/// As it is written it imports the app's script, which imports it: two files cannot each carry the other's hash. So it
/// waits to be told ([`joined`]). And it leaves the compiling of a stream to hosts that name the type of a wasm; this
/// one reads the bytes, whatever they are called.
fn join(script: &str, names: &BTreeMap<String, String>) -> Result<String> {
    let mut text = once(
        script,
        "import { initSync } from \"./app.js\";",
        "let initSync;\nexport const attach = (init) => { initSync = init; };",
    )?;
    let stream = "WebAssembly.instantiateStreaming(src, imports)";
    if text.matches(stream).count() != names.len() {
        bail!("`{stream}` is not there once a part");
    }
    text = text.replace(stream, "read(src, imports)");
    for (made, name) in names {
        text = once(
            &text,
            &format!("\"./{made}\""),
            &format!("\"./@@{name}@@\""),
        )?;
    }
    text.push_str(
        "async function read(src, imports) {\n    \
             const answer = await src;\n    \
             if (!answer.ok) throw new Error(`${answer.status} for ${answer.url}`);\n    \
             return WebAssembly.instantiate(await answer.arrayBuffer(), imports);\n\
         }\n",
    );
    Ok(text)
}

/// The app's script as it is served: it names the join script by its served path, and tells it how to reach the first part.
///
/// # Errors
/// When wasm-bindgen wrote something else than is looked for.
pub(crate) fn joined(app: &str) -> Result<String> {
    let (import, served) = (imported(), format!("./@@{JOIN}@@"));
    let quoted = |quote: char| format!("from {quote}{import}{quote}");
    let named = [quoted('"'), quoted('\'')]
        .into_iter()
        .find(|import| app.contains(import.as_str()))
        .context("app.js does not import the join script")?;
    // Once for each part that the app fetches.
    let mut text = app.replace(&named, &format!("from '{served}'"));
    if !text.contains("function initSync(") {
        bail!("app.js has no initSync");
    }
    write!(
        text,
        "\nimport {{ attach }} from '{served}';\nattach(initSync);\n"
    )?;
    Ok(text)
}

fn once(text: &str, old: &str, new: &str) -> Result<String> {
    if text.matches(old).count() != 1 {
        bail!("`{old}` is not there exactly once");
    }
    Ok(text.replacen(old, new, 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCRIPT: &str = "import { initSync } from \"./app.js\";\n\
        const src = fetch(new URL(\"./chunk_3.wasm\", import.meta.url));\n\
        (WebAssembly.instantiateStreaming(src, imports));\n\
        const src = fetch(new URL(\"./split_shed.wasm\", import.meta.url));\n\
        (WebAssembly.instantiateStreaming(src, imports));\n";

    fn shared() -> BTreeMap<String, String> {
        let needs =
            |place: &str, files: [&str; 2]| (place.to_owned(), files.map(str::to_owned).to_vec());
        names(&HashMap::from([
            needs("shed", ["chunk_3", "split_shed"]),
            ("horses".to_owned(), vec!["chunk_3".to_owned()]),
        ]))
    }

    #[test]
    fn a_part_is_named_by_the_places_that_need_it() {
        let names = shared();
        let named: Vec<(&str, &str)> = names
            .iter()
            .map(|(made, name)| (made.as_str(), name.as_str()))
            .collect();
        assert_eq!(
            named,
            [
                ("chunk_3.wasm", "later-horses-shed.wasm"),
                ("split_shed.wasm", "later-shed.wasm"),
            ]
        );
    }

    #[test]
    fn the_join_script_names_no_file_that_names_it() {
        let text = join(SCRIPT, &shared()).unwrap();
        assert!(!text.contains("app.js"), "{text}");
        assert!(text.contains("\"./@@later-horses-shed.wasm@@\""), "{text}");
        assert!(text.contains("\"./@@later-shed.wasm@@\""), "{text}");
        assert!(!text.contains("Streaming"), "{text}");
    }

    #[test]
    fn another_script_than_the_known_one_is_refused() {
        let refused = |script: &str| join(script, &shared()).is_err();
        assert!(!refused(SCRIPT));
        assert!(refused(&SCRIPT.replace("initSync", "start")));
        assert!(refused(&SCRIPT.replace("chunk_3", "chunk_4")));
        assert!(refused(&SCRIPT.replacen("Streaming", "", 1)));
        assert!(refused(&format!("{SCRIPT}{SCRIPT}")));
        assert!(joined("export { initSync };").is_err());
    }

    #[test]
    fn the_app_tells_the_join_script_where_it_is() {
        let app = "import * as first from \"./join.js\"\nimport * as second from \"./join.js\"\n\
            imports[\"./join.js\"] = first;\nfunction initSync(module) {}\n";
        let text = joined(app).unwrap();
        for import in ["first", "second"] {
            let named = format!("import * as {import} from './@@join.js@@'\n");
            assert!(text.contains(&named), "{text}");
        }
        // The wasm asks for it under the name it was linked with.
        assert!(text.contains("imports[\"./join.js\"]"), "{text}");
        assert!(text.ends_with("attach(initSync);\n"), "{text}");
    }
}
