//! Lines of at most 75 octets, as the standard asks, never cut inside a letter.

/// Octets of a line at most, without its end.
pub(super) const OCTETS: usize = 75;
/// The end of a line.
const END: &str = "\r\n";

/// Writes a line with its end, folded: a line that goes on begins with a space.
pub(super) fn line(out: &mut String, content: &str) {
    let mut used = 0;
    for letter in content.chars() {
        let more = letter.len_utf8();
        if OCTETS < used + more {
            out.push_str(END);
            out.push(' ');
            used = 1;
        }
        out.push(letter);
        used += more;
    }
    out.push_str(END);
}
