//! Names of the core's fields, whose keys end in their unit.

/// The unit at the end of a key as it stands there, and as it is written.
const UNITS: &[(&str, &str)] = &[
    ("beats_per_min", "beats a minute"),
    ("m_per_min", "m a minute"),
    ("thousand_kg_km", "thousand kg km"),
    ("g_per_kg_body", "g a kg of weight"),
    ("g_per_kg", "g a kg of weight"),
    ("mcal_per_kg", "Mcal a kg"),
    ("mg_per_kg", "mg a kg"),
    ("kg_per_h", "kg an hour"),
    ("per_minute", "a minute"),
    ("degc", "°C"),
    ("percent", "%"),
    ("minutes", "min"),
    ("days", "days"),
    ("years", "years"),
    ("cm", "cm"),
    ("m2", "m²"),
    ("kg_per_ha", "kg a hectare"),
    ("in", "in"),
    ("kg", "kg"),
];

/// Names that a key alone would not give.
const NAMES: &[(&str, &str)] = &[
    ("a_day_kg", "Hay a day"),
    ("area_m2", "The area"),
    ("asked_percent", "The level asked for"),
    ("adf_percent", "ADF"),
    ("batch_kg", "How much there is"),
    ("body_length_cm", "Body length"),
    ("condition_five_step", "Condition on 0 to 5"),
    ("condition_nine_step", "Condition on 1 to 9"),
    ("breaths_per_minute", "Breathing"),
    ("cores", "The number of cores"),
    ("day_dry_matter_kg", "Dry matter a day"),
    ("dry_matter_percent", "Dry matter"),
    ("energy_mcal_per_kg", "Energy"),
    ("esc_percent", "ESC"),
    ("foal_age_days", "The foal's age"),
    ("foal_heart_girth_in", "The foal's heart girth"),
    ("girth_cm", "Heart girth"),
    ("grown_kg", "The grown weight"),
    ("heart_beats_per_min", "The heart rate"),
    ("hole_cm", "The width of the holes"),
    ("length_to_girth", "Length divided by girth"),
    ("loss_fraction", "The part that is lost"),
    ("lost_fraction", "The part that is lost"),
    ("ndf_percent", "NDF"),
    ("neck_cm", "Neck girth"),
    ("nsc_percent", "NSC"),
    ("price_minor", "The price"),
    ("rate_g_per_kg_body", "The rate on the label"),
    ("soak_minutes", "The soak"),
    ("soak_minutes_a_day", "Minutes of work a day"),
    ("sugar_starch_percent", "Sugar and starch"),
    ("umbilical_girth_cm", "Belly girth"),
    ("weight_kg", "Weight"),
    ("walk_minutes", "The walk"),
    ("trot_minutes", "The trot"),
    ("canter_minutes", "The canter"),
    ("wsc_percent", "WSC"),
];

/// The unit of a key as it stands in it, and as it is written; both empty where there is none.
pub(super) fn unit(key: &str) -> (&'static str, &'static str) {
    UNITS
        .iter()
        .find(|(end, _)| stem(key, end).is_some())
        .copied()
        .unwrap_or(("", ""))
}

/// A unit behind a figure.
pub(super) fn spaced(unit: &str) -> String {
    if unit.is_empty() {
        String::new()
    } else {
        format!(" {unit}")
    }
}

/// The name of a field, from its key.
pub(super) fn name(key: &str) -> String {
    if let Some((_, name)) = NAMES.iter().find(|(known, _)| *known == key) {
        return (*name).to_owned();
    }
    let bare = UNITS
        .iter()
        .find_map(|(end, _)| stem(key, end))
        .unwrap_or(key);
    capital(&bare.replace('_', " "))
}

fn stem<'a>(key: &'a str, unit: &str) -> Option<&'a str> {
    key.strip_suffix(unit)?.strip_suffix('_')
}

/// With a capital at its head.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// Names, which keep their capital inside a sentence.
const PROPER: &[&str] = &["Arabian", "Bermuda", "Icelandic", "Rhodes", "Shetland"];

/// With a small letter at its head, for inside a sentence; a name and a word in capitals stay.
pub(super) fn small(text: &str) -> String {
    if PROPER.iter().any(|name| text.starts_with(name)) {
        return text.to_owned();
    }
    let mut letters = text.chars();
    let (first, second) = (letters.next(), letters.next());
    match (first, second) {
        (Some(_), Some(second)) if second.is_uppercase() => text.to_owned(),
        (Some(first), _) => first.to_lowercase().chain(text.chars().skip(1)).collect(),
        (None, _) => String::new(),
    }
}

/// "kg, lb or st".
pub(super) fn either(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [only] => (*only).to_owned(),
        [first @ .., last] => format!("{} or {last}", first.join(", ")),
    }
}
