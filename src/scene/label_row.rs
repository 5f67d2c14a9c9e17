//! In which row a text under a line stands, clear of the ones before it.

/// The first of `rows` rows in which each text, a middle and a width in run order, stands clear of
/// what is there; none where every row is taken.
pub fn label_rows(texts: &[(f64, f64)], rows: usize) -> Vec<Option<usize>> {
    let mut taken_to = vec![f64::NEG_INFINITY; rows];
    texts
        .iter()
        .map(|(middle, width)| {
            let (from, to) = (middle - width / 2.0, middle + width / 2.0);
            let row = taken_to.iter().position(|taken| *taken <= from)?;
            taken_to[row] = to;
            Some(row)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_stand_clear_of_one_another_in_the_first_row_that_has_room() {
        let texts = [(10.0, 20.0), (15.0, 10.0), (22.0, 10.0), (26.0, 10.0)];
        assert_eq!(label_rows(&texts, 2), [Some(0), Some(1), None, Some(0)]);
        assert_eq!(label_rows(&texts, 3), [Some(0), Some(1), Some(2), Some(0)]);
        assert_eq!(label_rows(&texts, 0), [None; 4]);
    }
}
