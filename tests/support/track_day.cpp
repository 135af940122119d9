// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/track_day.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace support {

namespace {

using geo::WaterPoint;
using std::chrono::milliseconds;

constexpr double errorLasts_s = 30.0;

double minutesBetween(units::Moment a, units::Moment b) {
    return std::abs(std::chrono::duration<double, std::ratio<60>>(a - b).count());
}

/// The boat and its receiver.
class Sailor {
public:
    Sailor(TrackTrouble trouble, std::uint64_t seed) : trouble_(trouble), chance_(seed) {
        every_s_ = std::floor(number(1.0, 11.0));
        noise_m_ = trouble == TrackTrouble::noise ? 8.0 : 3.0;
        keeps_ = std::exp(-every_s_ / errorLasts_s);
    }

    TrackDay day() {
        const int stays = 3 + static_cast<int>(number(0.0, 3.0));
        run(number(200.0, 900.0), number(0.8, 2.5));
        for (int i = 0; i < stays; ++i) {
            stay(std::exp(number(std::log(12.0), std::log(120.0))) * 60.0);
            if (trouble_ == TrackTrouble::trolling && i % 2 == 0) {
                troll(number(20.0, 60.0) * 60.0);
            }
            run(number(60.0, 600.0), number(0.8, 2.5));
            if (trouble_ == TrackTrouble::slowDrift && i % 2 == 0) {
                drift(number(12.0, 60.0) * 60.0);
                run(number(60.0, 600.0), number(0.8, 2.5));
            }
        }
        if (trouble_ == TrackTrouble::gaps) {
            loseSome();
        }
        return std::move(day_);
    }

private:
    double number(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(chance_);
    }

    void seen(WaterPoint at) {
        const double fresh_m = noise_m_ * std::sqrt(1.0 - keeps_ * keeps_);
        std::normal_distribution<double> error(0.0, fresh_m);
        errorX_m_ = keeps_ * errorX_m_ + error(chance_);
        errorY_m_ = keeps_ * errorY_m_ + error(chance_);
        day_.track.push_back({{at.x_m + errorX_m_, at.y_m + errorY_m_}, now_});
        now_ += milliseconds(std::llround(1000.0 * every_s_));
    }

    /// Straight on, until so much is sailed or a time is over.
    void go(double way_m, double speed_m_s, double heading) {
        const double step_m = speed_m_s * every_s_;
        for (double gone_m = 0.0; gone_m < way_m; gone_m += step_m) {
            at_.x_m += step_m * std::cos(heading);
            at_.y_m += step_m * std::sin(heading);
            seen(at_);
        }
    }
    void run(double way_m, double speed_m_s) {
        go(way_m, speed_m_s, number(0.0, 2.0 * std::numbers::pi));
    }
    void troll(double time_s) {
        const double speed_m_s = number(0.5, 1.2);
        double heading = number(0.0, 2.0 * std::numbers::pi);
        for (double left_s = time_s; left_s > 0.0;) {
            const double leg_s = number(60.0, 400.0);
            go(speed_m_s * leg_s, speed_m_s, heading);
            heading += number(1.0, 2.0 * std::numbers::pi - 1.0);
            left_s -= leg_s;
        }
    }
    void drift(double time_s) {
        const double speed_m_s = number(0.04, 0.10);
        go(speed_m_s * time_s, speed_m_s, number(0.0, 2.0 * std::numbers::pi));
    }
    void stay(double time_s) {
        const units::Moment start = now_;
        const bool swings = trouble_ == TrackTrouble::swing;
        const double swing_m = swings ? number(3.0, 10.0) : number(0.0, 1.5);
        const double period_s = number(90.0, 480.0);
        const double across = number(0.0, 2.0 * std::numbers::pi);
        const double phase = number(0.0, 2.0 * std::numbers::pi);
        for (double gone_s = 0.0; gone_s < time_s; gone_s += every_s_) {
            const double off_m =
                swing_m * std::sin(phase + 2.0 * std::numbers::pi * gone_s / period_s);
            seen({at_.x_m + off_m * std::cos(across), at_.y_m + off_m * std::sin(across)});
        }
        day_.stays.push_back({at_, start, now_, {}});
    }
    void loseSome() {
        const auto& whole = day_.track;
        const auto length = whole.back().time - whole.front().time;
        for (int i = 0, count = 1 + static_cast<int>(number(0.0, 4.0)); i < count; ++i) {
            const auto from =
                whole.front().time +
                milliseconds(std::llround(number(0.0, 1.0) * static_cast<double>(length.count())));
            const auto to = from + milliseconds(std::llround(number(1.0, 15.0) * 60'000.0));
            std::erase_if(day_.track, [&](const rates::TrackPoint& point) {
                // What is silent when a stay begins or ends hides when it did.
                const bool isEdge = std::ranges::any_of(day_.stays, [&](const auto& stay) {
                    return minutesBetween(point.time, stay.start) < 1.0 ||
                           minutesBetween(point.time, stay.end) < 1.0;
                });
                return from <= point.time && point.time < to && !isEdge;
            });
        }
        for (rates::TrackPoint& point : day_.track) {
            if (number(0.0, 1.0) < 0.003) {
                point.place.x_m += number(-400.0, 400.0);
                point.place.y_m += number(-400.0, 400.0);
            }
        }
    }

    TrackTrouble trouble_;
    std::mt19937_64 chance_;
    double every_s_ = 5.0;
    double noise_m_ = 3.0;
    double keeps_ = 0.0;
    double errorX_m_ = 0.0;
    double errorY_m_ = 0.0;
    WaterPoint at_;
    units::Moment now_ = units::Moment(std::chrono::hours(24L * 365 * 50));
    TrackDay day_;
};

} // namespace

TrackDay trackDay(TrackTrouble trouble, std::uint64_t seed) {
    return Sailor(trouble, seed).day();
}

FoundOfDay compared(const TrackDay& day, TrackTrouble trouble,
                    const std::vector<rates::TrackStay>& found) {
    const auto overlap_s = [](const rates::TrackStay& a, const rates::TrackStay& b) {
        const auto both = std::min(a.end, b.end) - std::max(a.start, b.start);
        return std::max(0.0, std::chrono::duration<double>(both).count());
    };
    const auto length_s = [](const rates::TrackStay& stay) {
        return std::chrono::duration<double>(stay.end - stay.start).count();
    };
    const double reach_m = trouble == TrackTrouble::noise ? 10.0 : 5.0;
    FoundOfDay out;
    std::vector<bool> isRight(found.size(), false);
    for (const rates::TrackStay& stay : day.stays) {
        ++out.stays;
        int met = 0;
        const rates::TrackStay* one = nullptr;
        for (std::size_t i = 0; i < found.size(); ++i) {
            const double both_s = overlap_s(stay, found[i]);
            met += both_s > 0.0 ? 1 : 0;
            if (2.0 * both_s >= length_s(stay) && 2.0 * both_s >= length_s(found[i])) {
                one = &found[i];
                isRight[i] = true;
            }
        }
        if (one == nullptr || met != 1) {
            continue;
        }
        ++out.found;
        const double off_min =
            std::max(minutesBetween(one->start, stay.start), minutesBetween(one->end, stay.end));
        const double off_m = geo::distance_m(one->place, stay.place);
        out.timed += off_min <= 2.0 ? 1 : 0;
        out.placed += off_m <= reach_m ? 1 : 0;
        out.worstTime_min = std::max(out.worstTime_min, off_min);
        out.worstPlace_m = std::max(out.worstPlace_m, off_m);
    }
    out.wrong = static_cast<int>(std::ranges::count(isRight, false));
    return out;
}

} // namespace support
