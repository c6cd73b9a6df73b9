//! What was decided of each number of a pasted text, as it stands in a draft.

/// What a person decided of a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Decided {
    /// It was accepted, and stands in the form.
    Accepted,
    /// It is not this.
    NotThis,
}

/// The decisions as one text of a draft, by the place of each number.
pub fn decided_text(decided: &[(usize, Decided)]) -> String {
    decided
        .iter()
        .map(|(at, decided)| match decided {
            Decided::Accepted => format!("{at}+"),
            Decided::NotThis => format!("{at}-"),
        })
        .collect::<Vec<_>>()
        .join(" ")
}

/// The decisions of such a text.
pub fn decided_of(text: &str) -> Vec<(usize, Decided)> {
    text.split(' ')
        .filter_map(|word| {
            let (at, decided) = match (word.strip_suffix('+'), word.strip_suffix('-')) {
                (Some(at), _) => (at, Decided::Accepted),
                (None, Some(at)) => (at, Decided::NotThis),
                (None, None) => return None,
            };
            Some((at.parse().ok()?, decided))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn decisions_come_back_from_a_draft() {
        let decided = vec![(0, Decided::Accepted), (12, Decided::NotThis)];
        assert_eq!(decided_of(&decided_text(&decided)), decided);
        assert_eq!(decided_of("x 3 4?"), []);
    }
}
