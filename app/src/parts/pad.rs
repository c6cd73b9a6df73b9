//! The pad of twelve keys, always in the same place above the action.

use leptos::prelude::*;

use super::{Drawing, Entry, Icon};

/// What a key of the pad does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Key {
    /// A digit, 0 to 9.
    Digit(u8),
    /// The decimal mark.
    Point,
    /// Takes the last character away.
    Erase,
    /// Half a step less.
    HalfLess,
    /// Half a step more.
    HalfMore,
    /// Leaves this one out.
    Skip,
    /// A key of the fourth column, from the top: it changes the number by a step that the screen knows.
    Step(u8),
}

impl Key {
    /// The typed text after this key. A second decimal mark changes nothing; a key that types nothing leaves it as it is.
    pub fn typed(self, text: &str) -> String {
        let mut text = text.to_owned();
        match self {
            Self::Digit(digit) => text.push_str(&digit.to_string()),
            Self::Point if text.contains(['.', ',']) => {}
            Self::Point => text.push_str(if text.is_empty() { "0." } else { "." }),
            Self::Erase => {
                text.pop();
            }
            Self::HalfLess | Self::HalfMore | Self::Skip | Self::Step(_) => {}
        }
        text
    }
}

/// A key as it is shown.
#[derive(Debug, Clone)]
pub struct PadCell {
    /// What it does.
    pub key: Key,
    /// What stands on it. The erase key shows a drawing instead.
    pub shown: String,
    /// What a screen reader says for it where that differs; empty otherwise.
    pub name: String,
    /// For a key that chooses: whether it is the chosen one.
    pub held: Option<Signal<bool>>,
}

impl PadCell {
    /// A key that types.
    pub fn new(key: Key, shown: impl Into<String>) -> Self {
        Self {
            key,
            shown: shown.into(),
            name: String::new(),
            held: None,
        }
    }

    /// The same key with a name for screen readers.
    #[must_use]
    pub fn named(mut self, name: impl Into<String>) -> Self {
        self.name = name.into();
        self
    }

    /// The same key as one that chooses.
    #[must_use]
    pub fn held(mut self, held: Signal<bool>) -> Self {
        self.held = Some(held);
        self
    }

    /// The pad for a number: 1 to 9, then `point`, 0 and erase, with the names of these two for screen readers.
    pub fn number(point: &str, point_name: &str, erase_name: &str) -> Vec<Self> {
        let mut cells: Vec<Self> = (1..=9)
            .map(|digit| Self::new(Key::Digit(digit), digit.to_string()))
            .collect();
        cells.push(Self::new(Key::Point, point).named(point_name));
        cells.push(Self::new(Key::Digit(0), "0"));
        cells.push(Self::new(Key::Erase, "").named(erase_name));
        cells
    }
}

/// The pad. The keys are reported, not typed: the screen sets the new text, for a number with [`Key::typed`]. The cursor
/// stays in the slot's input meanwhile, so that the keys of a keyboard work beside it.
#[component]
pub fn Pad(
    /// What the group of keys is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The keys, three a row; those of a fourth column at the end.
    cells: Vec<PadCell>,
    /// A key was pressed.
    #[prop(into)]
    on_key: Callback<Key>,
    /// The tie to the slot, where there is an input behind the pad.
    #[prop(optional, into)]
    entry: Option<Entry>,
) -> impl IntoView {
    let steps = cells
        .iter()
        .filter(|cell| matches!(cell.key, Key::Step(_)))
        .count();
    let steps = (0 < steps).then(|| steps.to_string());
    let keys = cells
        .into_iter()
        .map(|cell| {
            let PadCell {
                key,
                shown,
                name,
                held,
            } = cell;
            let long = (shown.chars().count() > 1).then_some("");
            let step = match key {
                Key::Step(step) => Some(step.to_string()),
                _ => None,
            };
            let face = if key == Key::Erase {
                view! { <Icon of=Drawing::Erase /> }.into_any()
            } else {
                shown.into_any()
            };
            view! {
                <button
                    class="key"
                    type="button"
                    data-long=long
                    data-step=step
                    aria-label=(!name.is_empty()).then_some(name)
                    aria-pressed=move || held.map(|held| if held.get() { "true" } else { "false" })
                    on:mousedown=move |event| event.prevent_default()
                    on:click=move |_| on_key.run(key)
                >
                    {face}
                </button>
            }
        })
        .collect_view();
    let keyboard = move || {
        entry
            .is_some_and(|entry| entry.phone.get())
            .then_some("phone")
    };
    view! {
        <div class="pad" data-keyboard=keyboard>
            <div class="pad-keys" role="group" aria-label=name data-steps=steps>{keys}</div>
        </div>
    }
}

/// Changes between the pad and the phone's keyboard.
#[component]
pub fn PadSwitch(
    /// The tie to the slot.
    entry: Entry,
    /// The words for the phone's keyboard.
    #[prop(into)]
    phone: String,
    /// The words for the pad.
    #[prop(into)]
    pad: String,
) -> impl IntoView {
    let says = move || {
        if entry.phone.get() {
            pad.clone()
        } else {
            phone.clone()
        }
    };
    let pressed = move |_| {
        entry.phone.update(|phone| *phone = !*phone);
        entry.focus();
    };
    view! { <button class="quiet" type="button" on:click=pressed>{says}</button> }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_type_a_number() {
        let typed = [
            Key::Digit(4),
            Key::Point,
            Key::Point,
            Key::Digit(3),
            Key::Digit(5),
            Key::Digit(5),
            Key::Erase,
        ]
        .iter()
        .fold(String::new(), |text, key| key.typed(&text));
        assert_eq!(typed, "4.35");
    }

    #[test]
    fn a_leading_point_gets_its_zero_and_a_comma_counts_as_one() {
        assert_eq!(Key::Point.typed(""), "0.");
        assert_eq!(Key::Point.typed("4,"), "4,");
        assert_eq!(Key::Erase.typed(""), "");
        assert_eq!(Key::Skip.typed("7"), "7");
    }

    #[test]
    fn the_number_pad_has_twelve_keys() {
        let cells = PadCell::number(".", "point", "erase");
        assert_eq!(cells.len(), 12);
        assert_eq!(cells[10].key, Key::Digit(0));
    }
}
