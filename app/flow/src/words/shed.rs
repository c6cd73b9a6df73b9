//! The labels of the shed.

/// What the shed says.
pub trait ShedWords {
    /// The place.
    fn shed(&self) -> &'static str;
    /// The sentence: nets to weigh for today.
    fn nets_to_weigh(&self, count: usize) -> String;
    /// The sentence: nothing to weigh, nothing due.
    fn nothing_to_weigh(&self) -> &'static str;
    /// The sentence: no plan with nets yet.
    fn shed_empty(&self) -> &'static str;
    /// The primary action.
    fn weigh_nets(&self) -> &'static str;
    /// The cord.
    fn nets_and_tubs(&self) -> &'static str;
    /// A tag of nets: "Nets for Bramble".
    fn nets_for(&self, name: &str) -> String;
    /// Its word: "2 to weigh" or "filled".
    fn nets_left(&self, left: usize) -> String;
    /// The hay, as a list.
    fn hay_here(&self) -> &'static str;
    /// No hay is there yet.
    fn no_hay_here(&self) -> &'static str;
    /// Adds a lot.
    fn add_hay(&self) -> &'static str;
    /// Starts a soak.
    fn start_a_soak(&self) -> &'static str;
    /// The chips.
    fn weather_today(&self) -> &'static str;
    /// They are carried over.
    fn weather_carried(&self) -> &'static str;
    /// What they drive.
    fn weather_hint(&self) -> &'static str;
}
