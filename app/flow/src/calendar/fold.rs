//! Lines of at most 75 octets, as the standard asks, never cut inside a letter.

/// Octets of a line at most, without its end.
pub(super) const OCTETS: usize = 75;
/// The end of a line.
const END: &str = "\r\n";

/// Writes a line with its end, folded: a line that goes on begins with a space.
pub(super) fn line(out: &mut String, content: &str) {
    let mut rest = content;
    let mut room = OCTETS;
    while room < rest.len() {
        let Some((now, later)) = rest.split_at_checked(cut(rest, room)) else {
            break;
        };
        out.push_str(now);
        out.push_str(END);
        out.push(' ');
        rest = later;
        room = OCTETS - 1;
    }
    out.push_str(rest);
    out.push_str(END);
}

/// Where a text that is longer than its room is cut: between two letters that are no spaces, because some calendars drop
/// spaces at either end of a line; where there are only spaces, at the last letter that has room.
fn cut(text: &str, room: usize) -> usize {
    let mut last = 0;
    let mut between = None;
    let mut before = ' ';
    for (at, letter) in text.char_indices().take_while(|(at, _)| *at <= room) {
        last = at;
        if 0 < at && !before.is_whitespace() && !letter.is_whitespace() {
            between = Some(at);
        }
        before = letter;
    }
    between.unwrap_or(last)
}
