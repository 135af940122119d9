// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/bench/learning/truth_water.h"

#include "core/logbook/conditions.h"

#include <functional>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace learning_bench {

inline constexpr int tripsOfSeason = 20;
inline constexpr std::array<double, 4> hourTimes{0.7, 0.8, 1.4, 1.1};

/// What makes fish in truth, hidden from the plan: fish per rod-hour at any place on any trip.
///
/// W1 section x kind x hexagon; W2 smooth in space with a best depth; W3 kinds within a cast alone;
/// W4 nothing matters; W5a sections dealt anew half-way; W5b the best depth moves with the season;
/// W6 section, and windward banks twice as good.
class World {
public:
    World(const TruthWater& water, std::string name, std::uint32_t seed, int trips);

    [[nodiscard]] double rateAt(const TruthPlace& place, int trip) const;
    /// Of every place of the water.
    [[nodiscard]] std::vector<double> rates(int trip) const;
    [[nodiscard]] const logbook::Wind& wind(int trip) const { return winds_[at(trip)]; }
    [[nodiscard]] double temperature_c(int trip) const { return temperatures_c_[at(trip)]; }
    [[nodiscard]] double luck(int trip) const { return lucks_[at(trip)]; }

private:
    static std::size_t at(int trip) { return static_cast<std::size_t>(trip); }
    double gamma(double shape);
    void deal();
    [[nodiscard]] double raw(const TruthPlace& place, int trip) const;
    [[nodiscard]] double smoothAt(geo::WaterPoint place) const;
    [[nodiscard]] double bestDepth_m(double quantile) const;
    void dealSmooth();

    const TruthWater& water_;
    std::string name_;
    int trips_;
    std::mt19937 random_;
    std::vector<logbook::Wind> winds_;
    std::vector<double> temperatures_c_;
    std::vector<double> lucks_;
    std::vector<double> sections_;
    std::vector<double> laterSections_;
    std::vector<double> kinds_;
    std::map<int, double> hexes_;
    std::vector<double> ofShares_;
    struct Wave {
        double east;
        double north;
        double phase;
    };
    std::vector<Wave> smooth_;
    double best_m_ = 0.0;
    std::vector<double> depths_m_; ///< Of all places, ascending.
    std::vector<double> scale_;    ///< By trip: brings the mean over the water to the base rate.
};

} // namespace learning_bench
