//! Puts the folder to host together: replaces tokens, and gives every file but a few a name with the hash of its
//! content, those that others name first.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use anyhow::{Context as _, Result, bail};
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;

use crate::stamp::{Stamp, hex, sha256};
use crate::token::{Piece, Token, pieces};

/// Files by their path with `/`.
pub(crate) type Files = BTreeMap<String, Vec<u8>>;

/// A folder ready to be hosted.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Site {
    /// The id of the build.
    pub(crate) build: String,
    /// What is served.
    pub(crate) files: Files,
}

/// Digits of a content hash in a file's name.
pub(crate) const HASH_DIGITS: usize = 10;

/// Names that others know and that therefore stay, beside the licence texts.
const KEPT: [&str; 6] = [
    "index.html",
    "reset.html",
    "sw.js",
    "manifest.webmanifest",
    "robots.txt",
    "404.html",
];
/// Served, but of no use without a network.
const ONLINE_ONLY: [&str; 4] = ["sw.js", "reset.html", "robots.txt", "404.html"];
const TEXT: [&str; 7] = ["html", "js", "css", "webmanifest", "json", "svg", "txt"];

/// Puts a site together from the files of `public/`, the app's `app.js` and `app.wasm` among them. `stamp` makes
/// another build of the same content.
///
/// # Errors
/// On an unknown token, a text file that is not UTF-8, files that name each other in a circle, or `@@files@@` in
/// a file whose own name would have to be in that list.
pub(crate) fn assemble(sources: &Files, stamp: Option<&str>) -> Result<Site> {
    let mut id = Stamp::new("build", "").part(stamp.unwrap_or_default().as_bytes());
    for (name, bytes) in sources {
        id = id.part(name.as_bytes()).part(bytes);
    }
    let mut build = id.text();
    build.truncate(16);

    let mut work = Work {
        sources,
        build,
        placed: BTreeMap::new(),
        open: Vec::new(),
        list: None,
    };
    let inlined = only_inlined(sources)?;
    let mut files = Files::new();
    for name in sources
        .keys()
        .filter(|name| !is_kept(name) && !inlined.contains(name.as_str()))
    {
        work.place(name)?;
    }
    for (path, bytes) in work.placed.values() {
        files.insert(path.clone(), bytes.clone());
    }
    let kept: Vec<&String> = sources.keys().filter(|name| is_kept(name)).collect();
    let list: BTreeSet<&str> = files
        .keys()
        .chain(kept.iter().copied())
        .map(String::as_str)
        .collect();
    let list: Vec<&str> = list
        .into_iter()
        .filter(|name| !ONLINE_ONLY.contains(name))
        .collect();
    work.list = Some(serde_json::to_string(&list)?);
    for name in kept {
        let bytes = work.content(name, name)?;
        files.insert(name.clone(), bytes);
    }
    Ok(Site {
        build: work.build,
        files,
    })
}

/// Whether a file keeps its name.
pub(crate) fn is_kept(name: &str) -> bool {
    let lower = name.to_ascii_lowercase();
    KEPT.contains(&name) || lower.starts_with("license") || lower.starts_with("licence")
}

/// Whether a path carries a content hash, so that what it names never changes.
pub(crate) fn is_hashed(path: &str) -> bool {
    let stem = Path::new(path)
        .file_stem()
        .and_then(|stem| stem.to_str())
        .unwrap_or_default();
    stem.rsplit_once('-').is_some_and(|(_, hash)| {
        hash.len() == HASH_DIGITS
            && hash
                .bytes()
                .all(|c| c.is_ascii_digit() || matches!(c, b'a'..=b'f'))
    })
}

fn is_text(name: &str) -> bool {
    let extension = Path::new(name)
        .extension()
        .and_then(|extension| extension.to_str());
    extension.is_some_and(|extension| TEXT.contains(&extension))
}

/// Files that stand inside others only and are not served themselves.
fn only_inlined(sources: &Files) -> Result<BTreeSet<&str>> {
    let mut inlined = BTreeSet::new();
    let mut named = BTreeSet::new();
    for (name, bytes) in sources.iter().filter(|(name, _)| is_text(name)) {
        for piece in pieces(text(name, bytes)?) {
            match piece {
                Piece::Token(Token::Inline(path)) => inlined.insert(path),
                Piece::Token(Token::Path(path)) => named.insert(path),
                Piece::Token(_) | Piece::Text(_) => false,
            };
        }
    }
    Ok(inlined
        .into_iter()
        .filter(|path| !named.contains(path) && !is_kept(path))
        .collect())
}

fn text<'a>(name: &str, bytes: &'a [u8]) -> Result<&'a str> {
    std::str::from_utf8(bytes).with_context(|| format!("public/{name} is not UTF-8"))
}

struct Work<'a> {
    sources: &'a Files,
    build: String,
    /// By source name: the served path and the finished content.
    placed: BTreeMap<&'a str, (String, Vec<u8>)>,
    /// The files being worked on, each named by the one before it.
    open: Vec<&'a str>,
    /// `@@files@@`, once every hashed name is known.
    list: Option<String>,
}

impl<'a> Work<'a> {
    /// The served path of a file.
    fn place(&mut self, name: &str) -> Result<String> {
        let (name, _) = self
            .sources
            .get_key_value(name)
            .context("not a file of public/")?;
        if is_kept(name) {
            return Ok(name.clone());
        }
        if let Some((path, _)) = self.placed.get(name.as_str()) {
            return Ok(path.clone());
        }
        let bytes = self.content(name, name)?;
        let path = with_hash(name, &bytes);
        self.placed.insert(name, (path.clone(), bytes));
        Ok(path)
    }

    /// The finished content of `name` as it stands in `host`, which is another file when it is inlined.
    fn content(&mut self, name: &'a str, host: &str) -> Result<Vec<u8>> {
        let bytes = self.sources.get(name).context("not a file of public/")?;
        if !is_text(name) {
            return Ok(bytes.clone());
        }
        if self.open.contains(&name) {
            bail!(
                "files name each other in a circle: {} -> {name}",
                self.open.join(" -> ")
            );
        }
        self.open.push(name);
        let mut finished = String::with_capacity(bytes.len());
        for piece in pieces(text(name, bytes)?) {
            match piece {
                Piece::Text(text) => finished.push_str(text),
                Piece::Token(token) => {
                    let value = self.value(token, host);
                    finished.push_str(
                        &value.with_context(|| format!("public/{name}: token {}", shown(token)))?,
                    );
                }
            }
        }
        self.open.pop();
        Ok(finished.into_bytes())
    }

    fn value(&mut self, token: Token<'a>, host: &str) -> Result<String> {
        match token {
            Token::Build => Ok(self.build.clone()),
            Token::Files if !is_kept(host) => {
                bail!("only a file that keeps its name can list the others")
            }
            Token::Files => self.list.clone().context("the list is not known yet"),
            Token::Path(path) => Ok(relative(host, &self.place(path)?)),
            Token::Inline(path) => {
                let bytes = self.content(path, host)?;
                Ok(text(path, &bytes)?.to_owned())
            }
            Token::Csp(path) => {
                let bytes = self.content(path, host)?;
                Ok(format!("'sha256-{}'", STANDARD.encode(sha256(&bytes))))
            }
        }
    }
}

fn shown(token: Token<'_>) -> String {
    match token {
        Token::Build => "@@build@@".to_owned(),
        Token::Files => "@@files@@".to_owned(),
        Token::Inline(path) => format!("@@inline:{path}@@"),
        Token::Csp(path) => format!("@@csp:{path}@@"),
        Token::Path(path) => format!("@@{path}@@"),
    }
}

/// `icons/leaf.svg` with the hash of its content: `icons/leaf-1a2b3c4d5e.svg`.
fn with_hash(name: &str, bytes: &[u8]) -> String {
    let mut hash = hex(&sha256(bytes));
    hash.truncate(HASH_DIGITS);
    let file = name.rfind('/').map_or(0, |at| at + 1);
    match name[file..].rfind('.') {
        Some(dot) => format!("{}-{hash}{}", &name[..file + dot], &name[file + dot..]),
        None => format!("{name}-{hash}"),
    }
}

/// The way from the folder of one file to another.
fn relative(from: &str, to: &str) -> String {
    let mut from: Vec<&str> = from.split('/').collect();
    from.pop();
    let to: Vec<&str> = to.split('/').collect();
    let shared = from
        .iter()
        .zip(&to[..to.len() - 1])
        .take_while(|(a, b)| a == b)
        .count();
    let up = vec![".."; from.len() - shared];
    [up.as_slice(), &to[shared..]].concat().join("/")
}

#[cfg(test)]
#[path = "site_tests.rs"]
mod tests;
