//! The media type of a file by its name. Browsers refuse to run a module or stream wasm of another type.

use std::path::Path;

/// The exact value of `Content-Type` for a file of this name.
pub(crate) fn content_type(name: &str) -> &'static str {
    match Path::new(name)
        .extension()
        .and_then(|extension| extension.to_str())
        .unwrap_or_default()
    {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" | "jpeg" => "image/jpeg",
        "webp" => "image/webp",
        "ico" => "image/x-icon",
        "woff2" => "font/woff2",
        "txt" | "" => "text/plain; charset=utf-8",
        "pdf" => "application/pdf",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn wasm_has_no_charset() {
        assert_eq!(content_type("app-0123456789.wasm"), "application/wasm");
    }

    #[test]
    fn every_kind_of_file_that_is_served_has_its_type() {
        for (name, expected) in [
            ("index.html", "text/html; charset=utf-8"),
            ("sw.js", "text/javascript; charset=utf-8"),
            ("manifest.webmanifest", "application/manifest+json"),
            ("icons/leaf.svg", "image/svg+xml"),
            ("LICENSE-MIT", "text/plain; charset=utf-8"),
            ("odd.bin", "application/octet-stream"),
        ] {
            assert_eq!(content_type(name), expected, "{name}");
        }
    }
}
