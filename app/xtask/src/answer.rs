//! What the server answers: a function of the request and a shelf of files, without a socket.

use crate::mime::content_type;
use crate::policy;
use crate::site::is_hashed;
use crate::stamp::{hex, sha256};

/// Where the files are.
pub(crate) trait Shelf {
    /// The file at a clean relative path, if it is there.
    fn read(&self, path: &str) -> Option<Vec<u8>>;
}

/// What was asked.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Ask<'a> {
    /// `GET`, `HEAD`, …
    pub(crate) method: &'a str,
    /// The path with its query, as it came.
    pub(crate) target: &'a str,
    /// `Accept-Encoding`.
    pub(crate) encodings: &'a str,
    /// `If-None-Match`.
    pub(crate) known: &'a str,
}

/// What is sent.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Answer {
    /// The status code.
    pub(crate) status: u16,
    /// Headers, without the length.
    pub(crate) headers: Vec<(&'static str, String)>,
    /// The body; for `HEAD` the server sends its length alone.
    pub(crate) body: Vec<u8>,
}

/// Answers one request. `at` is the path under which the folder stands, with `/` at both ends.
pub(crate) fn answer(shelf: &impl Shelf, at: &str, ask: Ask<'_>) -> Answer {
    if !matches!(ask.method, "GET" | "HEAD") {
        let mut answer = plain(405, "only GET and HEAD\n");
        answer.headers.push(("Allow", "GET, HEAD".to_owned()));
        return answer;
    }
    let path = ask.target.split(['?', '#']).next().unwrap_or_default();
    if format!("{path}/") == at {
        let mut answer = plain(308, "");
        answer.headers.push(("Location", at.to_owned()));
        return answer;
    }
    let found = path
        .strip_prefix(at)
        .and_then(clean)
        .and_then(|name| Some((shelf.read(&name)?, name)));
    let Some((whole, name)) = found else {
        return plain(404, "not found\n");
    };
    file(shelf, &name, whole, ask)
}

/// The file name that a path below the folder means: decoded, an index page at its end when it names a folder;
/// none when it tries to leave the folder or holds what no served name does.
fn clean(path: &str) -> Option<String> {
    let decoded = decode(path)?;
    let name = if decoded.is_empty() || decoded.ends_with('/') {
        format!("{decoded}index.html")
    } else {
        decoded
    };
    let plain = !name.contains(['\\', '\0', ':']);
    let inside = name.split('/').all(|part| !matches!(part, "" | "." | ".."));
    (plain && inside).then_some(name)
}

fn decode(path: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(path.len());
    let mut rest = path.bytes();
    while let Some(byte) = rest.next() {
        if byte != b'%' {
            bytes.push(byte);
            continue;
        }
        let digits = [rest.next()?, rest.next()?];
        let digits = std::str::from_utf8(&digits)
            .ok()
            .filter(|digits| !digits.starts_with('+'))?;
        bytes.push(u8::from_str_radix(digits, 16).ok()?);
    }
    String::from_utf8(bytes).ok()
}

fn file(shelf: &impl Shelf, name: &str, whole: Vec<u8>, ask: Ask<'_>) -> Answer {
    let policy = policy::for_file(shelf, name, &whole);
    let (body, encoding) = encoded(shelf, name, whole, ask.encodings);
    let tag = format!("\"{}\"", &hex(&sha256(&body))[..20]);
    let kept = if is_hashed(name) {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    };
    let mut headers = vec![
        ("Content-Type", content_type(name).to_owned()),
        ("Cache-Control", kept.to_owned()),
        ("Vary", "Accept-Encoding".to_owned()),
        ("ETag", tag.clone()),
    ];
    headers.extend(encoding.map(|encoding| ("Content-Encoding", encoding.to_owned())));
    headers.extend(policy::fixed());
    headers.extend(policy.map(|policy| ("Content-Security-Policy", policy)));
    if ask
        .known
        .split(',')
        .any(|known| known.trim().trim_start_matches("W/") == tag)
    {
        return Answer {
            status: 304,
            headers,
            body: Vec::new(),
        };
    }
    Answer {
        status: 200,
        headers,
        body,
    }
}

/// The smallest form that the browser takes and that stands beside the file.
fn encoded(
    shelf: &impl Shelf,
    name: &str,
    whole: Vec<u8>,
    encodings: &str,
) -> (Vec<u8>, Option<&'static str>) {
    for (encoding, extension) in [("br", "br"), ("gzip", "gz")] {
        if takes(encodings, encoding)
            && let Some(form) = shelf.read(&format!("{name}.{extension}"))
        {
            return (form, Some(encoding));
        }
    }
    (whole, None)
}

fn takes(encodings: &str, encoding: &str) -> bool {
    encodings.split(',').any(|item| {
        let mut parts = item.split(';').map(str::trim);
        let refused = |weight: &str| {
            weight
                .strip_prefix("q=")
                .is_some_and(|weight| weight.parse::<f32>().is_ok_and(|weight| weight <= 0.0))
        };
        parts.next() == Some(encoding) && !parts.any(refused)
    })
}

fn plain(status: u16, text: &str) -> Answer {
    let mut headers = vec![
        ("Content-Type", "text/plain; charset=utf-8".to_owned()),
        ("Cache-Control", "no-store".to_owned()),
    ];
    headers.extend(policy::fixed());
    Answer {
        status,
        headers,
        body: text.as_bytes().to_vec(),
    }
}

#[cfg(test)]
#[path = "answer_tests.rs"]
mod tests;
