//! A table of text cells, which becomes a list where there is no room.

use leptos::prelude::*;

/// A column.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Column {
    /// Its head.
    pub word: String,
    /// Whether it holds numbers, which are set to the right.
    pub number: bool,
}

impl Column {
    /// A column of words.
    pub fn words(word: impl Into<String>) -> Self {
        Self {
            word: word.into(),
            number: false,
        }
    }

    /// A column of numbers.
    pub fn numbers(word: impl Into<String>) -> Self {
        Self {
            word: word.into(),
            number: true,
        }
    }
}

/// A table. The first cell of a row is its head.
#[component]
pub fn Table(
    /// What it shows.
    #[prop(into)]
    caption: Signal<String>,
    /// The columns.
    columns: Vec<Column>,
    /// The rows, a text for each column.
    #[prop(into)]
    rows: Signal<Vec<Vec<String>>>,
    /// So many columns that a phone shows them as a list.
    #[prop(optional)]
    wide: bool,
) -> impl IntoView {
    let head = columns
        .iter()
        .map(|column| view! { <th scope="col" class=class_of(column)>{column.word.clone()}</th> })
        .collect_view();
    let body = move || {
        rows.get().into_iter().map(|row| {
            let cells = row.into_iter().zip(&columns).enumerate().map(|(at, (text, column))| {
                if at == 0 {
                    view! { <th scope="row">{text}</th> }.into_any()
                } else {
                    view! { <td class=class_of(column) data-head=column.word.clone()>{text}</td> }.into_any()
                }
            }).collect_view();
            view! { <tr>{cells}</tr> }
        }).collect_view()
    };
    view! {
        <table class="table" data-wide=wide.then_some("")>
            <caption>{caption}</caption>
            <thead><tr>{head}</tr></thead>
            <tbody>{body}</tbody>
        </table>
    }
}

fn class_of(column: &Column) -> Option<&'static str> {
    column.number.then_some("n")
}
