//! Fixed texts as constants: the program's first file carries those that it shows and no others, since
//! each is looked up where the program is compiled.

/// The text of a [`Label`](crate::report::words::Label) by the name of its key.
macro_rules! fixed {
    ($key:ident) => {
        fixed!(@ $key)
    };
    ($group:ident::$kind:ident::$key:ident) => {
        fixed!(@ $group(crate::report::words::$kind::$key))
    };
    (@ $($label:tt)+) => {
        const { crate::report::words::fixed_text(crate::report::words::Label::$($label)+) }
    };
}
