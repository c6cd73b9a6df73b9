//! The tokens that stand in the text files of `public/`.
//!
//! | token | becomes |
//! | --- | --- |
//! | `@@build@@` | the id of the build |
//! | `@@files@@` | a JSON array of what the service worker keeps, relative to the folder's root |
//! | `@@app.js@@`, `@@app.wasm@@`, `@@styles.css@@` | that file's served path, relative to the file it stands in |
//! | `@@inline:boot.js@@` | that file's content, its own tokens replaced |
//! | `@@csp:boot.js@@` | `'sha256-…'` of that same content, for a content security policy |

/// A piece of a text file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Piece<'a> {
    /// Stays as it is.
    Text(&'a str),
    /// Is replaced.
    Token(Token<'a>),
}

/// A token, without its marks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Token<'a> {
    /// `build`.
    Build,
    /// `files`.
    Files,
    /// `inline:PATH`.
    Inline(&'a str),
    /// `csp:PATH`.
    Csp(&'a str),
    /// Any other name: the path of a file.
    Path(&'a str),
}

const MARK: &str = "@@";

/// Cuts a text at its tokens. Two marks hold a token only when nothing but letters, digits and `_./:-` stands
/// between them; other marks are text.
pub(crate) fn pieces(text: &str) -> Vec<Piece<'_>> {
    let mut pieces = Vec::new();
    let mut rest = text;
    let mut plain = 0;
    while let Some(open) = rest[plain..].find(MARK).map(|at| at + plain) {
        let inner = &rest[open + MARK.len()..];
        let end = inner.find(|c: char| !is_name(c)).unwrap_or(inner.len());
        if end == 0 || !inner[end..].starts_with(MARK) {
            plain = open + 1;
            continue;
        }
        if open > 0 {
            pieces.push(Piece::Text(&rest[..open]));
        }
        pieces.push(Piece::Token(token(&inner[..end])));
        rest = &inner[end + MARK.len()..];
        plain = 0;
    }
    if !rest.is_empty() {
        pieces.push(Piece::Text(rest));
    }
    pieces
}

fn is_name(c: char) -> bool {
    c.is_ascii_alphanumeric() || matches!(c, '_' | '.' | '/' | ':' | '-')
}

fn token(name: &str) -> Token<'_> {
    match name.split_once(':') {
        Some(("inline", path)) => Token::Inline(path),
        Some(("csp", path)) => Token::Csp(path),
        _ if name == "build" => Token::Build,
        _ if name == "files" => Token::Files,
        _ => Token::Path(name),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_token_is_read() {
        let text = "a@@build@@b@@files@@@@icons/icon-192.png@@@@inline:boot.js@@ @@csp:boot.js@@";
        assert_eq!(
            pieces(text),
            [
                Piece::Text("a"),
                Piece::Token(Token::Build),
                Piece::Text("b"),
                Piece::Token(Token::Files),
                Piece::Token(Token::Path("icons/icon-192.png")),
                Piece::Token(Token::Inline("boot.js")),
                Piece::Text(" "),
                Piece::Token(Token::Csp("boot.js")),
            ]
        );
    }

    #[test]
    fn marks_that_hold_no_name_are_text() {
        for text in [
            "",
            "plain",
            "@@",
            "@@@@",
            "a @@iterator b",
            "@@two words@@",
            "@ @build@ @",
            "é@@ü@@",
        ] {
            let whole: Vec<_> = if text.is_empty() {
                vec![]
            } else {
                vec![Piece::Text(text)]
            };
            assert_eq!(pieces(text), whole, "{text}");
        }
    }

    #[test]
    fn a_token_after_loose_marks_is_still_found() {
        assert_eq!(
            pieces("@@@build@@"),
            [Piece::Text("@"), Piece::Token(Token::Build)]
        );
        assert_eq!(
            pieces("@@x y@@build@@"),
            [Piece::Text("@@x y"), Piece::Token(Token::Build)]
        );
    }

    #[test]
    fn no_byte_is_lost() {
        let text = "x@@a.b@@y@@z@@@q@@files@@";
        let back: String = pieces(text)
            .iter()
            .map(|piece| match piece {
                Piece::Text(text) => (*text).to_owned(),
                Piece::Token(Token::Path(path)) => format!("@@{path}@@"),
                Piece::Token(Token::Files) => "@@files@@".to_owned(),
                Piece::Token(other) => panic!("not in the text: {other:?}"),
            })
            .collect();
        assert_eq!(back, text);
    }
}
