// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/planted_faults.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

namespace support {

namespace {

class Planter {
public:
    Planter(soundings::SurveyDay& day, const geo::WaterFrame& frame, std::uint32_t seed)
        : day_(&day), frame_(&frame), random_(seed), done_(day.soundings.size(), Planted::nothing) {
    }

    void stretches(Planted fault, double perThousand, std::size_t least, std::size_t most) {
        const auto count = static_cast<std::size_t>(
            std::lround(perThousand * static_cast<double>(done_.size()) / 1000.0));
        constexpr std::size_t tries = 200;
        std::size_t planted = 0;
        for (std::size_t n = 0; n < tries * count && planted < count; ++n) {
            const std::size_t length = whole(least, most);
            const std::size_t first = whole(1, done_.size() - 2);
            if (isFree(first, length) && suits(fault, first, length)) {
                plant(fault, first, length);
                ++planted;
            }
        }
    }

    void spikes(double share) {
        for (std::size_t i = 0; i < done_.size(); ++i) {
            if (between(0.0, 1.0) < share && done_[i] == Planted::nothing && shown_m(i) > 0.1) {
                spike(i);
            }
        }
    }

    std::vector<Planted> done() { return std::move(done_); }

private:
    // The library's own distributions differ from one platform to the next.
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_()) / 4294967296.0;
    }
    std::size_t whole(std::size_t low, std::size_t high) {
        return low + random_() % (high - low + 1);
    }
    [[nodiscard]] double shown_m(std::size_t i) const {
        return day_->soundings[i].shown.inMetres();
    }
    void show(std::size_t i, double depth_m) {
        day_->soundings.edit()[i].shown = units::Depth::metres(std::round(depth_m * 10.0) / 10.0);
    }

    /// Within one pass, and some soundings away from another stretch.
    [[nodiscard]] bool isFree(std::size_t first, std::size_t length) const {
        constexpr std::size_t apart = 12;
        if (first < apart || first + length + apart >= done_.size()) {
            return false;
        }
        const auto from = static_cast<std::ptrdiff_t>(first - apart);
        const auto to = static_cast<std::ptrdiff_t>(first + length + apart);
        const auto next = std::ranges::upper_bound(day_->passStarts, first - apart);
        return std::all_of(done_.begin() + from, done_.begin() + to,
                           [](Planted p) { return p == Planted::nothing; }) &&
               (next == day_->passStarts.end() || *next >= first + length + apart);
    }

    [[nodiscard]] bool suits(Planted fault, std::size_t first, std::size_t length) const {
        double least_m = shown_m(first);
        for (std::size_t i = first; i < first + length; ++i) {
            least_m = std::fmin(least_m, shown_m(i));
        }
        const geo::WaterPoint from = frame_->toWater(day_->soundings[first].place);
        const geo::WaterPoint to = frame_->toWater(day_->soundings[first + length].place);
        switch (fault) {
        case Planted::doubleEcho:
            return least_m > 1.2;
        case Planted::stuck:
            return std::fabs(shown_m(first + length) - shown_m(first)) >= 1.5 &&
                   geo::distance_m(from, to) > 30.0;
        default:
            return least_m > 0.1;
        }
    }

    void plant(Planted fault, std::size_t first, std::size_t length) {
        const double turn = between(0.0, 2.0 * std::numbers::pi);
        const double far_m = between(70.0, 300.0);
        const double held_m = shown_m(first - 1);
        for (std::size_t i = first; i < first + length; ++i) {
            done_[i] = fault;
            if (fault == Planted::dropOut) {
                show(i, 0.0);
            } else if (fault == Planted::doubleEcho) {
                show(i, 2.0 * shown_m(i));
            } else if (fault == Planted::stuck) {
                done_[i] = std::fabs(shown_m(i) - held_m) < 0.05 ? Planted::unseen : fault;
                show(i, held_m);
            } else {
                geo::WaterPoint at = frame_->toWater(day_->soundings[i].place);
                at.x_m += far_m * std::sin(turn);
                at.y_m += far_m * std::cos(turn);
                day_->soundings.edit()[i].place = frame_->toEarth(at);
            }
        }
    }

    void spike(std::size_t i) {
        const double depth_m = shown_m(i);
        const double kind = between(0.0, 1.0);
        double to_m = depth_m + between(1.0, 15.0);
        if (kind < 0.3) {
            to_m = 2.0 * depth_m;
        } else if (kind < 0.6) {
            to_m = between(0.1, 0.7) * depth_m;
        }
        if (std::fabs(to_m - depth_m) < std::fmax(1.0, 0.2 * depth_m)) {
            to_m = depth_m + std::fmax(1.0, 0.2 * depth_m);
        }
        show(i, to_m);
        done_[i] = Planted::spike;
    }

    soundings::SurveyDay* day_;
    const geo::WaterFrame* frame_;
    std::mt19937 random_;
    std::vector<Planted> done_;
};

} // namespace

std::string_view nameOf(Planted fault) {
    static constexpr std::array names{"nothing", "spike", "drop_out", "double_echo",
                                      "stuck",   "jump",  "unseen"};
    return names.at(static_cast<std::size_t>(fault));
}

std::vector<Planted> plantFaults(soundings::SurveyDay& day, const geo::WaterFrame& frame,
                                 const FaultWish& wish, std::uint32_t seed) {
    Planter planter(day, frame, seed);
    planter.stretches(Planted::stuck, wish.stuck, 18, 50);
    planter.stretches(Planted::doubleEcho, wish.doubleEchoes, 3, 15);
    planter.stretches(Planted::jump, wish.jumps, 1, 12);
    planter.stretches(Planted::dropOut, wish.dropOuts, 1, 12);
    planter.spikes(wish.spikeShare);
    return planter.done();
}

} // namespace support
