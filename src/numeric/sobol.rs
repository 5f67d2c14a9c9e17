//! The Sobol sequence: points that fill a cube more evenly than random ones, the same every time.

/// The most coordinates that a point can have.
pub const SOBOL_DIMENSIONS: usize = 32;
const BITS: usize = 30;

/// Primitive polynomials (degree, inner coefficients) and first direction numbers of coordinates 2
/// to 32: S. Joe and F. Y. Kuo, "Constructing Sobol sequences with better two-dimensional
/// projections", SIAM J. Sci. Comput. 30 (2008) 2635-2654, list new-joe-kuo-6, rows d = 2 to 32.
/// (The first 20 written from memory, the others as scipy holds them; confirmed point by point against scipy's generator.)
const JOE_KUO: [(u32, u32, &[u32]); SOBOL_DIMENSIONS - 1] = [
    (1, 0, &[1]),
    (2, 1, &[1, 3]),
    (3, 1, &[1, 3, 1]),
    (3, 2, &[1, 1, 1]),
    (4, 1, &[1, 1, 3, 3]),
    (4, 4, &[1, 3, 5, 13]),
    (5, 2, &[1, 1, 5, 5, 17]),
    (5, 4, &[1, 1, 5, 5, 5]),
    (5, 7, &[1, 1, 7, 11, 19]),
    (5, 11, &[1, 1, 5, 1, 1]),
    (5, 13, &[1, 1, 1, 3, 11]),
    (5, 14, &[1, 3, 5, 5, 31]),
    (6, 1, &[1, 3, 3, 9, 7, 49]),
    (6, 13, &[1, 1, 1, 15, 21, 21]),
    (6, 16, &[1, 3, 1, 13, 27, 49]),
    (6, 19, &[1, 1, 1, 15, 7, 5]),
    (6, 22, &[1, 3, 1, 15, 13, 25]),
    (6, 25, &[1, 1, 5, 5, 19, 61]),
    (7, 1, &[1, 3, 7, 11, 23, 15, 103]),
    (7, 4, &[1, 3, 7, 13, 13, 15, 69]),
    (7, 7, &[1, 1, 3, 13, 7, 35, 63]),
    (7, 8, &[1, 3, 5, 9, 1, 25, 53]),
    (7, 14, &[1, 3, 1, 13, 9, 35, 107]),
    (7, 19, &[1, 3, 1, 5, 27, 61, 31]),
    (7, 21, &[1, 1, 5, 11, 19, 41, 61]),
    (7, 28, &[1, 3, 5, 3, 3, 13, 69]),
    (7, 31, &[1, 1, 7, 13, 1, 19, 1]),
    (7, 32, &[1, 3, 7, 5, 13, 19, 59]),
    (7, 37, &[1, 1, 3, 9, 25, 29, 41]),
    (7, 41, &[1, 3, 5, 13, 23, 1, 55]),
    (7, 42, &[1, 3, 7, 3, 13, 59, 17]),
];

/// The sequence from its first point, which is the origin.
#[derive(Debug, Clone)]
pub struct Sobol {
    directions: [[u32; BITS]; SOBOL_DIMENSIONS],
    state: [u32; SOBOL_DIMENSIONS],
    index: u32,
}

impl Default for Sobol {
    fn default() -> Self {
        let mut directions = [[0; BITS]; SOBOL_DIMENSIONS];
        for (bit, direction) in directions[0].iter_mut().enumerate() {
            *direction = 1 << (BITS - 1 - bit);
        }
        for (row, (degree, inner, first)) in directions[1..].iter_mut().zip(JOE_KUO) {
            fill(row, degree as usize, inner, first);
        }
        Self {
            directions,
            state: [0; SOBOL_DIMENSIONS],
            index: 0,
        }
    }
}

fn fill(row: &mut [u32; BITS], degree: usize, inner: u32, first: &[u32]) {
    for bit in 0..BITS {
        row[bit] = if bit < degree {
            first[bit] << (BITS - 1 - bit)
        } else {
            let back = row[bit - degree];
            let mut direction = back ^ (back >> degree);
            for term in 1..degree {
                if inner >> (degree - 1 - term) & 1 == 1 {
                    direction ^= row[bit - term];
                }
            }
            direction
        };
    }
}

impl Iterator for Sobol {
    type Item = [f64; SOBOL_DIMENSIONS];

    fn next(&mut self) -> Option<Self::Item> {
        let scale = f64::from(1_u32 << BITS);
        let point = self.state.map(|value| f64::from(value) / scale);
        let bit = self.index.trailing_ones() as usize;
        for (state, directions) in self.state.iter_mut().zip(&self.directions) {
            *state ^= directions.get(bit)?;
        }
        self.index += 1;
        Some(point)
    }
}
