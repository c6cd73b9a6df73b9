//! The security headers: the policy that stands in the page, sent as a header too, with what only a header can say.

use crate::answer::Shelf;
use crate::mime::content_type;

/// Headers that every answer has.
///
/// Sharing of files is not named: a page may share from its own origin unless it is forbidden, and a browser that has
/// nothing to share with does not know the name `web-share` and warns of it on every page.
pub(crate) fn fixed() -> [(&'static str, String); 4] {
    [
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "no-referrer"),
        (
            "Permissions-Policy",
            "camera=(), display-capture=(), geolocation=(self), gyroscope=(), magnetometer=(), microphone=(), \
             midi=(), payment=(), screen-wake-lock=(self), serial=(), usb=()",
        ),
        ("Cross-Origin-Opener-Policy", "same-origin"),
    ]
    .map(|(name, value)| (name, value.to_owned()))
}

/// The content security policy for a file: its own when it is a page that has one, else that of the first page.
pub(crate) fn for_file(shelf: &impl Shelf, name: &str, bytes: &[u8]) -> Option<String> {
    let own = if content_type(name).starts_with("text/html") {
        in_page(&String::from_utf8_lossy(bytes))
    } else {
        None
    };
    let policy = own.or_else(|| in_page(&String::from_utf8_lossy(&shelf.read("index.html")?)))?;
    // A browser ignores frame-ancestors in a page, so it stands here only.
    Some(format!(
        "{}; frame-ancestors 'none'",
        policy.trim_end_matches([';', ' '])
    ))
}

/// The policy in a page's `<meta http-equiv="Content-Security-Policy" content="…">`, on one line.
fn in_page(page: &str) -> Option<String> {
    let lower = page.to_ascii_lowercase();
    let name = lower.find("http-equiv=\"content-security-policy\"")?;
    let open = lower[..name].rfind("<meta")?;
    let end = open + lower[open..].find('>')?;
    let content = open + lower[open..end].find("content=\"")? + "content=\"".len();
    let close = content + page[content..end].find('"')?;
    Some(
        page[content..close]
            .split_whitespace()
            .collect::<Vec<_>>()
            .join(" "),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    struct One(&'static str);

    impl Shelf for One {
        fn read(&self, path: &str) -> Option<Vec<u8>> {
            (path == "index.html").then(|| self.0.as_bytes().to_vec())
        }
    }

    const PAGE: &str = "<!doctype html><meta charset=utf-8>\n<meta http-equiv=\"Content-Security-Policy\"\n  \
                        content=\"default-src 'none';\n    script-src 'self' 'wasm-unsafe-eval';\"><p>";

    #[test]
    fn the_header_is_the_policy_of_the_page_and_more() {
        assert_eq!(
            for_file(&One(PAGE), "index.html", PAGE.as_bytes()).unwrap(),
            "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; frame-ancestors 'none'"
        );
    }

    #[test]
    fn the_attributes_may_stand_in_either_order() {
        let page = "<meta content=\"a\" http-equiv=\"content-security-policy\">";
        assert_eq!(in_page(page).unwrap(), "a");
        assert_eq!(in_page("<meta name=a><p>"), None);
        assert_eq!(
            in_page("<meta http-equiv=\"Content-Security-Policy\" content=\"a"),
            None
        );
    }

    #[test]
    fn a_page_with_its_own_policy_keeps_it_and_a_script_takes_that_of_the_first_page() {
        let own = "<meta http-equiv=\"Content-Security-Policy\" content=\"script-src 'sha256-x'\">";
        let shelf = One(PAGE);
        assert!(
            for_file(&shelf, "reset.html", own.as_bytes())
                .unwrap()
                .starts_with("script-src 'sha256-x'")
        );
        assert!(
            for_file(&shelf, "sw.js", b"")
                .unwrap()
                .starts_with("default-src 'none'")
        );
        assert_eq!(for_file(&One("<p>"), "index.html", b"<p>"), None);
    }
}
