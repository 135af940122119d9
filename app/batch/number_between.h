// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class Validator;
}

namespace batch {

/// Takes a number from `least` to `most`, both included. Unlike CLI::Range it does not take "nan",
/// which is neither below the one nor above the other and would go through every sum after it.
[[nodiscard]] CLI::Validator numberBetween(double least, double most);

} // namespace batch
