// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/marks/order_day.h"

#include <cstddef>
#include <vector>

namespace marks {

/// The day cut into equal turns, one for each of a set of stops, with the worth of every stop in
/// every turn and the price of every move. Refers to the input, which must outlive it.
class Turns {
public:
    /// \param set positions in `input.stops` that are to be visited.
    Turns(const DayInput& input, const std::vector<std::size_t>& set);

    /// See marks::worthOf(). \param order the stops of the set, in any order.
    [[nodiscard]] double worthOf(const std::vector<std::size_t>& order) const;
    /// The order of greatest worth: dynamic programming over subsets; time 2^n n^2.
    [[nodiscard]] std::vector<std::size_t> bestOrder(const std::vector<std::size_t>& set) const;
    /// An order that neither turning a stretch round nor moving a single stop betters, from two
    /// starts: as given, and always on to the nearest.
    [[nodiscard]] std::vector<std::size_t> goodOrder(const std::vector<std::size_t>& set) const;

private:
    [[nodiscard]] double toFirst(std::size_t stop) const;
    [[nodiscard]] double move(std::size_t from, std::size_t to) const;
    [[nodiscard]] double inTurn(std::size_t stop, std::size_t turn) const;
    [[nodiscard]] std::vector<std::size_t> nearestNext(std::vector<std::size_t> set) const;
    [[nodiscard]] std::vector<std::size_t> improved(std::vector<std::size_t> order) const;

    const DayInput& input_;
    std::vector<double> hourWeight_;              ///< Of each turn.
    std::vector<std::vector<double>> stopWeight_; ///< Of each stop in each turn; empty: all 1.
    double pricePerMetre_ = 0.0;
};

} // namespace marks
