//! The inputs of a row.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

/// The inputs of a row, by key. It remembers what was asked of it, so that an input nobody reads is seen.
#[derive(Debug, Default)]
pub struct Inputs {
    values: BTreeMap<String, String>,
    read: RefCell<BTreeSet<String>>,
    faults: RefCell<Vec<String>>,
}

impl Inputs {
    /// Reads `key=value;key=value`.
    pub fn parse(text: &str) -> Result<Self, String> {
        let mut values = BTreeMap::new();
        for pair in text.split(';').map(str::trim).filter(|p| !p.is_empty()) {
            let (key, value) = pair
                .split_once('=')
                .ok_or_else(|| format!("input {pair:?} is not key=value"))?;
            let (key, value) = (key.trim().to_owned(), value.trim().to_owned());
            if values.insert(key.clone(), value).is_some() {
                return Err(format!("input {key:?} stands twice"));
            }
        }
        Ok(Self {
            values,
            ..Self::default()
        })
    }

    /// The text of an input that must be there.
    pub fn text(&self, key: &str) -> Result<&str, String> {
        self.optional_text(key)
            .ok_or_else(|| self.fault(format!("input {key:?} is missing")))
    }

    /// The text of an input that may be absent.
    pub fn optional_text(&self, key: &str) -> Option<&str> {
        self.read.borrow_mut().insert(key.to_owned());
        self.values.get(key).map(String::as_str)
    }

    /// The number of an input that must be there.
    pub fn number(&self, key: &str) -> Result<f64, String> {
        let text = self.text(key)?;
        text.parse()
            .map_err(|_| self.fault(format!("input {key:?}: {text:?} is not a number")))
    }

    /// The number of an input that may be absent.
    pub fn optional_number(&self, key: &str) -> Result<Option<f64>, String> {
        match self.optional_text(key) {
            None => Ok(None),
            Some(_) => self.number(key).map(Some),
        }
    }

    /// For a formula that meets a text it does not know: the row is wrong, which is not a refusal.
    pub fn unknown(&self, key: &str) -> String {
        let value = self.values.get(key).map_or("", String::as_str);
        self.fault(format!(
            "input {key:?}: {value:?} is not known to the formula"
        ))
    }

    /// Notes that the row itself is wrong, so that it can never pass as a refusal.
    fn fault(&self, message: String) -> String {
        self.faults.borrow_mut().push(message.clone());
        message
    }

    /// The first thing that was wrong with the row itself.
    pub(super) fn first_fault(&self) -> Option<String> {
        self.faults.borrow().first().cloned()
    }

    /// The inputs that nobody asked for.
    pub(super) fn never_read(&self) -> Vec<String> {
        let read = self.read.borrow();
        self.values
            .keys()
            .filter(|key| !read.contains(*key))
            .cloned()
            .collect()
    }
}
