//! Serves a built folder on the loopback address.

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use anyhow::{Result, anyhow, bail};
use http_body_util::Full;
use hyper::body::{Bytes, Incoming};
use hyper::header::{ACCEPT_ENCODING, HeaderName, IF_NONE_MATCH};
use hyper::http::uri::PathAndQuery;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper::{Request, Response};
use hyper_util::rt::TokioIo;
use tokio::net::{TcpListener, TcpStream};

use crate::answer::{Answer, Ask, Shelf, answer};

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
    if std::net::TcpListener::bind(("127.0.0.1", USUAL)).is_ok() {
        return USUAL;
    }
    eprintln!("    port {USUAL} is taken; on another one the browser has its own, empty store");
    0
}

/// Serves `dir` under the path `at` and says where, on one line. Port 0 takes any free one. Returns only on an
/// error.
///
/// Every connection is a task of its own, so one that a browser opens ahead and leaves idle keeps nobody waiting.
///
/// # Errors
/// When the folder has no `index.html`, or the port is taken.
pub(crate) fn host(dir: &Path, port: u16, at: &str) -> Result<()> {
    let at: Arc<str> = ends(at).into();
    if !dir.join("index.html").is_file() {
        bail!(
            "{} has no index.html: run `cargo xtask dist` first",
            dir.display()
        );
    }
    let disk = Arc::new(Disk(dir.canonicalize()?));
    tokio::runtime::Builder::new_current_thread()
        .enable_io()
        .build()?
        .block_on(async {
            let server = TcpListener::bind(("127.0.0.1", port))
                .await
                .map_err(|error| anyhow!("port {port} cannot be used: {error}"))?;
            println!("listening on http://{}{at}", server.local_addr()?);
            std::io::stdout().flush()?;
            serve(server, disk, at).await
        })
}

async fn serve(server: TcpListener, disk: Arc<Disk>, at: Arc<str>) -> Result<()> {
    loop {
        let (connection, _) = server.accept().await?;
        tokio::spawn(converse(connection, Arc::clone(&disk), Arc::clone(&at)));
    }
}

/// Answers the requests of one connection until the browser goes away.
async fn converse(connection: TcpStream, disk: Arc<Disk>, at: Arc<str>) {
    let service = service_fn(|request| std::future::ready(reply(&request, &disk, &at)));
    // A browser that went away is none of our business.
    let _ = http1::Builder::new()
        .serve_connection(TokioIo::new(connection), service)
        .await;
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

fn reply(
    request: &Request<Incoming>,
    disk: &Disk,
    at: &str,
) -> hyper::http::Result<Response<Full<Bytes>>> {
    let value = |name: HeaderName| {
        let header = request.headers().get(name);
        header
            .and_then(|value| value.to_str().ok())
            .unwrap_or_default()
    };
    let target = request.uri().path_and_query();
    let ask = Ask {
        method: request.method().as_str(),
        target: target.map_or("", PathAndQuery::as_str),
        encodings: value(ACCEPT_ENCODING),
        known: value(IF_NONE_MATCH),
    };
    response(answer(disk, at, ask))
}

fn response(answer: Answer) -> hyper::http::Result<Response<Full<Bytes>>> {
    let mut response = Response::builder().status(answer.status);
    for (name, value) in answer.headers {
        response = response.header(name, value);
    }
    response.body(Full::new(answer.body.into()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use hyper::body::Body as _;
    use std::time::Duration;
    use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _};

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
        })
        .unwrap();
        assert_eq!(response.body().size_hint().exact(), Some(100_000));
        assert_eq!(response.headers().len(), 2);
    }

    /// A browser opens connections ahead and leaves them idle, more than anybody keeps threads for.
    #[test]
    fn idle_connections_keep_nobody_waiting() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
        let disk = Arc::new(Disk(folder.canonicalize().unwrap()));
        let runtime = tokio::runtime::Builder::new_current_thread()
            .enable_all()
            .build()
            .unwrap();
        let answered = runtime.block_on(async {
            let server = TcpListener::bind(("127.0.0.1", 0)).await.unwrap();
            let address = server.local_addr().unwrap();
            tokio::spawn(serve(server, disk, "/".into()));
            let mut open = Vec::new();
            for _ in 0..24 {
                let mut connection = TcpStream::connect(address).await.unwrap();
                let ask = b"GET /host.rs HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n";
                connection.write_all(ask).await.unwrap();
                open.push(connection);
            }
            let mut answered = 0;
            for connection in &mut open {
                let mut status = [0; 12];
                let read = connection.read_exact(&mut status);
                if tokio::time::timeout(Duration::from_secs(10), read)
                    .await
                    .is_ok()
                    && &status == b"HTTP/1.1 200"
                {
                    answered += 1;
                }
            }
            answered
        });
        assert_eq!(answered, 24);
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
