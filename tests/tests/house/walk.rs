//! The files of the repository.

use std::fs;
use std::path::{Path, PathBuf};
use tussock_tests::reference::crate_root;

/// A text file, with its path from the top of the repository, parted by `/`.
pub(crate) struct File {
    pub(crate) path: String,
    pub(crate) text: String,
}

impl File {
    /// For the samples of the rules' own tests.
    pub(crate) fn sample(path: &str, text: &str) -> Self {
        Self {
            path: path.to_owned(),
            text: text.to_owned(),
        }
    }

    /// The last part of the path.
    pub(crate) fn name(&self) -> &str {
        name_of(&self.path)
    }

    /// What its name ends in, without the point.
    pub(crate) fn extension(&self) -> &str {
        extension_of(&self.path)
    }

    /// Whether the file lies in one of these folders, or is one of these files.
    pub(crate) fn within(&self, places: &[impl AsRef<str>]) -> bool {
        places.iter().any(|place| {
            self.path
                .strip_prefix(place.as_ref())
                .is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
        })
    }

    /// The file as syntax.
    pub(crate) fn syntax(&self) -> syn::File {
        syn::parse_file(&self.text).unwrap_or_else(|e| panic!("{}: {e}", self.path))
    }

    /// The lines that are not comments, with their numbers.
    pub(crate) fn code_lines(&self) -> impl Iterator<Item = (usize, &str)> {
        let mut in_comment = false;
        self.text
            .lines()
            .enumerate()
            .map(|(index, line)| (index + 1, line))
            .filter(move |(_, line)| {
                let line = line.trim();
                let opens = line.starts_with("<!--");
                let hidden = in_comment || opens || line.starts_with("//");
                in_comment = (in_comment || opens) && !line.contains("-->");
                // What follows the end of a comment on its line is code.
                !hidden
                    || line
                        .split_once("-->")
                        .is_some_and(|(_, rest)| !rest.is_empty())
            })
    }
}

/// The last part of a path.
pub(crate) fn name_of(path: &str) -> &str {
    path.rsplit('/').next().unwrap_or(path)
}

/// What a path ends in after its last point; empty without one.
fn extension_of(path: &str) -> &str {
    name_of(path).rsplit_once('.').map_or("", |(_, ext)| ext)
}

/// The top of the repository.
pub(crate) fn top() -> &'static Path {
    crate_root()
        .parent()
        .expect("the crate lies in the workspace")
}

/// The text of one file.
pub(crate) fn text(path: &str) -> String {
    fs::read_to_string(top().join(path)).unwrap_or_else(|e| panic!("{path}: {e}"))
}

/// What `.gitignore` leaves out: folders named from the top, which is all it may say.
fn left_out() -> Vec<String> {
    text(".gitignore")
        .lines()
        .filter(|line| !line.is_empty() && !line.starts_with('#'))
        .map(|line| {
            line.strip_prefix('/')
                .and_then(|rest| rest.strip_suffix('/'))
                .unwrap_or_else(|| panic!(".gitignore: {line} is not /a/folder/"))
                .to_owned()
        })
        .collect()
}

/// The paths of all files under a folder (`""` for all), parted by `/`, in order.
pub(crate) fn paths(under: &str) -> Vec<String> {
    let mut skip = left_out();
    skip.push(".git".to_owned());
    let mut found = Vec::new();
    let mut open = vec![PathBuf::from(under)];
    while let Some(folder) = open.pop() {
        let entries = fs::read_dir(top().join(&folder))
            .unwrap_or_else(|e| panic!("{}: {e}", folder.display()));
        for entry in entries {
            let entry = entry.expect("the folder can be read");
            let path = folder.join(entry.file_name());
            let text = path.to_str().expect("paths are text").replace('\\', "/");
            if skip.contains(&text) {
                continue;
            }
            if entry.file_type().expect("the entry has a type").is_dir() {
                open.push(path);
            } else {
                found.push(text);
            }
        }
    }
    found.sort();
    assert!(!found.is_empty(), "{under}: no files");
    found
}

/// The text files under a folder whose names end in one of these.
pub(crate) fn files(under: &str, extensions: &[&str]) -> Vec<File> {
    paths(under)
        .into_iter()
        .filter(|path| extensions.contains(&extension_of(path)))
        .map(|path| File {
            text: text(&path),
            path,
        })
        .collect()
}
