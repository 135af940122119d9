// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/learning/world.h"

#include "core/marks/factor_values.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace learning_bench {

namespace {

constexpr double baseRate = 0.12; // fish per rod-hour
constexpr int waves = 300;

double bell(double depth_m, double best_m, double width) {
    const double z = std::log(depth_m / best_m) / width;
    return std::exp(-0.5 * z * z);
}

/// Some names deal by their own hands, so that no two worlds share their luck.
std::uint32_t seedOf(const std::string& name, std::uint32_t seed) {
    return std::accumulate(
        name.begin(), name.end(), seed * 1009U + 77U,
        [](std::uint32_t sum, char c) { return sum * 31U + static_cast<std::uint32_t>(c); });
}

} // namespace

World::World(const TruthWater& water, std::string name, std::uint32_t seed, int trips)
    : water_(water), name_(std::move(name)), trips_(trips), random_(seedOf(name_, seed)) {
    std::normal_distribution<double> normal;
    std::weibull_distribution<double> speed(2.0, 5.0);
    for (int t = 0; t < trips; ++t) {
        winds_.push_back({units::Bearing::degrees(235.0 + 60.0 * normal(random_)),
                          units::Speed::metresPerSecond(std::min(speed(random_), 9.0))});
        temperatures_c_.push_back(18.0 - 13.0 * (t % tripsOfSeason) / (tripsOfSeason - 1.0) +
                                  0.5 * normal(random_));
        lucks_.push_back(gamma(3.0));
    }
    for (const TruthPlace& place : water.places()) {
        depths_m_.push_back(place.depth_m);
    }
    std::ranges::sort(depths_m_);
    deal();
    const bool isScaled = name_ == "W2" || name_ == "W3" || name_ == "W5b";
    scale_.assign(at(trips), 1.0);
    for (int t = 0; isScaled && t < trips; ++t) {
        double sum = 0.0;
        for (const TruthPlace& place : water.places()) {
            sum += name_ == "W5b" ? raw(place, t) / sections_[at(std::max(place.section, 0))]
                                  : raw(place, t);
        }
        scale_[at(t)] = static_cast<double>(water.places().size()) / sum;
    }
}

double World::gamma(double shape) {
    return std::gamma_distribution<double>(shape, 1.0 / shape)(random_);
}

void World::deal() {
    const double ofSection = name_ == "W5b" ? 3.0 : name_ == "W6" ? 2.5 : 1.5;
    for (int s = 0; s < water_.sections(); ++s) {
        sections_.push_back(gamma(ofSection));
        laterSections_.push_back(gamma(ofSection));
    }
    for (int k = 0; k < 12; ++k) {
        kinds_.push_back(gamma(2.0));
    }
    for (const TruthPlace& place : water_.places()) {
        if (!hexes_.contains(place.hex)) {
            hexes_[place.hex] = gamma(6.0);
        }
    }
    std::normal_distribution<double> normal(0.0, 1.2);
    for (int k = 0; k < 11; ++k) {
        ofShares_.push_back(normal(random_));
    }
    best_m_ = bestDepth_m(std::uniform_real_distribution<double>(0.2, 0.8)(random_));
    dealSmooth();
}

/// A Gaussian process with a Matern 3/2 covariance as a sum of waves whose numbers follow its
/// spectrum, a t distribution of 3 degrees in the plane (Rahimi and Recht 2007).
void World::dealSmooth() {
    const double length_m = std::uniform_real_distribution<double>(150.0, 400.0)(random_) / 2.7;
    std::normal_distribution<double> normal;
    std::chi_squared_distribution<double> chi2(3.0);
    std::uniform_real_distribution<double> phase(0.0, 2.0 * std::numbers::pi);
    for (int k = 0; k < waves; ++k) {
        const double stretch = std::sqrt(3.0 / chi2(random_)) / length_m;
        smooth_.push_back({normal(random_) * stretch, normal(random_) * stretch, phase(random_)});
    }
}

double World::smoothAt(geo::WaterPoint place) const {
    double sum = 0.0;
    for (const Wave& wave : smooth_) {
        sum += std::cos(wave.east * place.x_m + wave.north * place.y_m + wave.phase);
    }
    return sum * std::sqrt(2.0 / waves);
}

double World::bestDepth_m(double quantile) const {
    return depths_m_[static_cast<std::size_t>(quantile *
                                              static_cast<double>(depths_m_.size() - 1))];
}

double World::raw(const TruthPlace& place, int trip) const {
    const std::size_t section = at(std::max(place.section, 0));
    const auto found = hexes_.find(place.hex);
    const double hex = found == hexes_.end() ? 1.0 : found->second;
    if (name_ == "W1") {
        return sections_[section] * kinds_[at(place.kind)] * hex;
    }
    if (name_ == "W2") {
        return std::exp(0.8 * smoothAt(place.place)) * bell(place.depth_m, best_m_, 0.45);
    }
    if (name_ == "W3") {
        return std::exp(
            std::inner_product(place.shares.begin(), place.shares.end(), ofShares_.begin(), 0.0));
    }
    if (name_ == "W5a") {
        return (trip < trips_ / 2 ? sections_ : laterSections_)[section] * kinds_[at(place.kind)] *
               hex;
    }
    if (name_ == "W5b") {
        const double q = std::clamp((18.0 - temperatures_c_[at(trip)]) / 13.0, 0.0, 1.0);
        return sections_[section] * bell(place.depth_m, bestDepth_m(0.2 + 0.6 * q), 0.35);
    }
    if (name_ == "W6") {
        const double windward = marks::windwardValue(
            marks::windUpSlope(winds_[at(trip)], place.riseEast, place.riseNorth));
        return sections_[section] * (windward > 0.6 && place.toShore_m < 120.0 ? 2.0 : 1.0);
    }
    return 1.0; // W4
}

double World::rateAt(const TruthPlace& place, int trip) const {
    return baseRate * scale_[at(trip)] * raw(place, trip);
}

std::vector<double> World::rates(int trip) const {
    std::vector<double> rates;
    for (const TruthPlace& place : water_.places()) {
        rates.push_back(rateAt(place, trip));
    }
    return rates;
}

} // namespace learning_bench
