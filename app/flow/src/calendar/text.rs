//! Text as a calendar file holds it.

/// Escapes a text: backslash, semicolon, comma and the end of a line. Other control characters, which such a file may
/// not hold, are left out; a tab stays.
pub(super) fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '\\' | ';' | ',' => {
                out.push('\\');
                out.push(letter);
            }
            '\r' => {
                // One end of a line, however it was typed.
                letters.next_if_eq(&'\n');
                out.push_str("\\n");
            }
            '\n' => out.push_str("\\n"),
            '\t' => out.push(letter),
            other if other.is_control() => {}
            other => out.push(other),
        }
    }
    out
}
