//! Serves a built folder on the loopback address.

use std::io::{Cursor, Write as _};
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use anyhow::{Context as _, Result, anyhow, bail};
use tiny_http::{Header, Request, Response, Server};

use crate::answer::{Answer, Ask, Shelf, answer};

/// Requests answered at the same time.
const THREADS: usize = 4;

/// Where `serve` listens unless told otherwise. The browser keeps what it stores by address and port.
const USUAL: u16 = 7433;

/// A folder on the disk. A link that leads out of it is not followed.
struct Disk(PathBuf);

impl Shelf for Disk {
    fn read(&self, path: &str) -> Option<Vec<u8>> {
        let file = self.0.join(path).canonicalize().ok()?;
        if !file.starts_with(&self.0) || !file.is_file() {
            return None;
        }
        std::fs::read(file).ok()
    }
}

/// The port to serve on when none is named: the usual one, or any when that is taken.
pub(crate) fn usual_port() -> u16 {
    if TcpListener::bind(("127.0.0.1", USUAL)).is_ok() {
        return USUAL;
    }
    eprintln!("    port {USUAL} is taken; on another one the browser has its own, empty store");
    0
}

/// Serves `dir` under the path `at` and says where, on one line. Port 0 takes any free one. Returns only on an
/// error.
///
/// # Errors
/// When the folder has no `index.html`, or the port is taken.
pub(crate) fn host(dir: &Path, port: u16, at: &str) -> Result<()> {
    let at = ends(at);
    if !dir.join("index.html").is_file() {
        bail!(
            "{} has no index.html: run `cargo xtask dist` first",
            dir.display()
        );
    }
    let disk = Arc::new(Disk(dir.canonicalize()?));
    let server = Server::http(("127.0.0.1", port))
        .map_err(|error| anyhow!("port {port} cannot be used: {error}"))?;
    let address = server.server_addr().to_ip().context("no address")?;
    println!("listening on http://{address}{at}");
    std::io::stdout().flush()?;
    let server = Arc::new(server);
    let workers: Vec<_> = (0..THREADS)
        .map(|_| {
            let (server, disk, at) = (Arc::clone(&server), Arc::clone(&disk), at.clone());
            std::thread::spawn(move || {
                while let Ok(request) = server.recv() {
                    reply(request, disk.as_ref(), &at);
                }
            })
        })
        .collect();
    for worker in workers {
        worker.join().map_err(|_| anyhow!("the server stopped"))?;
    }
    bail!("the server stopped")
}

/// The path with `/` at both ends.
fn ends(at: &str) -> String {
    let inner = at.trim_matches('/');
    if inner.is_empty() {
        "/".to_owned()
    } else {
        format!("/{inner}/")
    }
}

fn reply(request: Request, disk: &Disk, at: &str) {
    let value = |name: &'static str| {
        let header = request
            .headers()
            .iter()
            .find(|header| header.field.equiv(name));
        header
            .map(|header| header.value.as_str().to_owned())
            .unwrap_or_default()
    };
    let (encodings, known) = (value("Accept-Encoding"), value("If-None-Match"));
    let method = request.method().as_str().to_owned();
    let ask = Ask {
        method: &method,
        target: request.url(),
        encodings: &encodings,
        known: &known,
    };
    let answer = answer(disk, at, ask);
    // A browser that went away is none of our business.
    let _ = request.respond(response(answer));
}

fn response(answer: Answer) -> Response<Cursor<Vec<u8>>> {
    let length = answer.body.len();
    let headers = answer
        .headers
        .iter()
        .filter_map(|(name, value)| Header::from_bytes(name.as_bytes(), value.as_bytes()).ok())
        .collect();
    Response::new(
        answer.status.into(),
        headers,
        Cursor::new(answer.body),
        Some(length),
        None,
    )
    // A known length is sent as such, however long.
    .with_chunked_threshold(usize::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_path_has_a_slash_at_both_ends() {
        for (given, expected) in [
            ("", "/"),
            ("/", "/"),
            ("sub/path", "/sub/path/"),
            ("/sub/path/", "/sub/path/"),
        ] {
            assert_eq!(ends(given), expected);
        }
    }

    #[test]
    fn every_header_can_be_sent() {
        let headers = vec![
            ("Content-Type", "application/wasm".to_owned()),
            ("ETag", "\"a\"".to_owned()),
        ];
        let response = response(Answer {
            status: 200,
            headers,
            body: vec![0; 100_000],
        });
        assert_eq!(response.data_length(), Some(100_000));
        assert_eq!(response.headers().len(), 2);
        assert_eq!(response.chunked_threshold(), usize::MAX);
    }

    #[test]
    fn the_disk_gives_files_of_the_folder_only() {
        let here = Path::new(env!("CARGO_MANIFEST_DIR"))
            .canonicalize()
            .unwrap();
        let disk = Disk(here.join("src"));
        assert!(disk.read("host.rs").is_some());
        assert!(disk.read("../Cargo.toml").is_none());
        assert!(disk.read(".").is_none());
        assert!(disk.read("none.rs").is_none());
    }
}
