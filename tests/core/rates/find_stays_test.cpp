// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rates/find_stays.h"

#include "tests/core/rates/log_builder.h"

#include <algorithm>
#include <random>

#include <gtest/gtest.h>

namespace {

using geo::WaterPoint;
using rates::FindStaysSettings;
using rates::Track;
using rates::TrackStay;
using std::chrono::minutes;
using std::chrono::seconds;

constexpr unsigned seed = 17;

/// A day's track put together leg by leg, with noise of 3 m that lasts half a minute.
class Boat {
public:
    Boat& lie(seconds time) { return leg(time, 0.0, 0.0); }
    Boat& row(double toX_m, double toY_m, double speed_m_s = 1.5) {
        const double way_m = geo::distance_m(at_, {toX_m, toY_m});
        const seconds time(static_cast<long>(way_m / speed_m_s) + 1);
        return leg(time, toX_m - at_.x_m, toY_m - at_.y_m);
    }
    Boat& silent(seconds time) {
        now_ += time;
        return *this;
    }
    Boat& wildFix(double offX_m) {
        track_.push_back({{at_.x_m + offX_m, at_.y_m}, now_});
        now_ += every_;
        return *this;
    }
    [[nodiscard]] units::Moment now() const { return now_; }
    [[nodiscard]] const Track& track() const { return track_; }

private:
    Boat& leg(seconds time, double dx_m, double dy_m) {
        const WaterPoint from = at_;
        const auto steps = static_cast<int>(time / every_);
        for (int i = 1; i <= steps; ++i) {
            const double share = static_cast<double>(i) / steps;
            at_ = {from.x_m + share * dx_m, from.y_m + share * dy_m};
            driftX_m_ = 0.85 * driftX_m_ + noise_(chance_);
            driftY_m_ = 0.85 * driftY_m_ + noise_(chance_);
            track_.push_back({{at_.x_m + driftX_m_, at_.y_m + driftY_m_}, now_});
            now_ += every_;
        }
        return *this;
    }

    std::mt19937 chance_{seed};
    std::normal_distribution<double> noise_{0.0, 1.6};
    double driftX_m_ = 0.0;
    double driftY_m_ = 0.0;
    WaterPoint at_;
    units::Moment now_ = logs::moment("2026-10-03T07:00:00Z");
    seconds every_{5};
    Track track_;
};

std::vector<TrackStay> find(const Track& track, const FindStaysSettings& settings = {}) {
    base::Progress progress;
    return rates::findStays(track, settings, progress).value();
}

double minutesApart(units::Moment a, units::Moment b) {
    return std::abs(std::chrono::duration<double, std::ratio<60>>(a - b).count());
}

TEST(FindStays, FindsWhereTheBoatLayAndFromWhenToWhen) {
    SCOPED_TRACE(seed);
    Boat boat;
    boat.row(400, 0);
    const auto begun = boat.now();
    boat.lie(minutes(40));
    const auto ended = boat.now();
    boat.row(400, 300).lie(minutes(25)).row(0, 0);
    const auto stays = find(boat.track());
    ASSERT_EQ(stays.size(), 2U);
    EXPECT_LT(geo::distance_m(stays[0].place, {400, 0}), 3.0);
    EXPECT_LT(geo::distance_m(stays[1].place, {400, 300}), 3.0);
    EXPECT_LT(minutesApart(stays[0].start, begun), 1.5);
    EXPECT_LT(minutesApart(stays[0].end, ended), 1.5);
    EXPECT_LT(stays[0].spread.inMetres(), 8.0);
}

TEST(FindStays, TakesAShortHaltForNone) {
    EXPECT_TRUE(find(Boat().row(300, 0).lie(minutes(5)).row(600, 0).track()).empty());
}

TEST(FindStays, TakesADriftForNone) {
    EXPECT_TRUE(find(Boat().row(100, 0, 0.3).row(500, 200, 0.3).track()).empty());
}

TEST(FindStays, BridgesALostSignalAndAFollowedFish) {
    Boat lost;
    lost.row(300, 0).lie(minutes(10)).silent(minutes(15)).lie(minutes(10)).row(0, 0);
    ASSERT_EQ(find(lost.track()).size(), 1U);
    Boat follow;
    follow.row(300, 0)
        .lie(minutes(12))
        .row(380, 0, 1.0)
        .row(300, 0, 1.0)
        .lie(minutes(12))
        .row(0, 0);
    const auto stays = find(follow.track());
    ASSERT_EQ(stays.size(), 1U);
    EXPECT_GT(stays[0].end - stays[0].start, minutes(25));
}

TEST(FindStays, KeepsTwoStaysAtOnePlaceApartWhenAnotherLiesBetween) {
    Boat boat;
    boat.row(300, 0).lie(minutes(15)).row(300, 100).lie(minutes(9)).row(300, 0).lie(minutes(15));
    EXPECT_EQ(find(boat.track()).size(), 3U);
}

TEST(FindStays, IsNotPutOffByWildFixes) {
    Boat boat;
    boat.row(300, 0);
    for (int i = 0; i < 6; ++i) {
        boat.lie(minutes(3)).wildFix(i % 2 == 0 ? 150.0 : -400.0);
    }
    boat.lie(minutes(3)).row(0, 0);
    const auto stays = find(boat.track());
    ASSERT_EQ(stays.size(), 1U);
    EXPECT_LT(geo::distance_m(stays[0].place, {300, 0}), 3.0);
}

TEST(FindStays, KeepsAStayWholeWhereAFewPositionsStray) {
    Boat boat;
    boat.row(300, 0).lie(minutes(20));
    for (int i = 0; i < 8; ++i) { // two of the spots of 20 s that a track is cut by
        boat.wildFix(60.0);
    }
    boat.lie(minutes(20)).row(0, 0);
    FindStaysSettings settings;
    settings.bridged = minutes(0);
    EXPECT_EQ(find(boat.track(), settings).size(), 1U) << "without anything joined afterwards";
}

/// A fix every three minutes for an hour, so fast to the east.
Track sparse(double speed_m_s) {
    Track track;
    for (int i = 0; i <= 20; ++i) {
        const seconds time(180 * i);
        const double east_m = speed_m_s * static_cast<double>(time.count());
        const double off_m = i % 2 == 0 ? 2.0 : -2.0;
        track.push_back({{east_m, off_m}, logs::moment("2026-10-03T07:00:00Z") + time});
    }
    return track;
}

TEST(FindStays, KnowsADriftFromAStayWhereFixesAreMinutesApart) {
    const auto stays = find(sparse(0.0));
    ASSERT_EQ(stays.size(), 1U);
    EXPECT_EQ(stays[0].end - stays[0].start, minutes(60));
    for (const double slow_m_s : {0.04, 0.05, 0.1}) {
        EXPECT_TRUE(find(sparse(slow_m_s)).empty()) << slow_m_s;
    }
}

TEST(FindStays, TakesAMoveOfFortyMetresForANewStay) {
    const auto stays = find(
        Boat().row(300, 0).lie(minutes(20)).row(340, 0, 0.7).lie(minutes(20)).row(0, 0).track());
    ASSERT_EQ(stays.size(), 2U);
}

TEST(FindStays, DoesNotDependOnTheOrderOfThePoints) {
    Track track = Boat().row(300, 0).lie(minutes(20)).row(500, 0).lie(minutes(12)).track();
    const auto sorted = find(track);
    std::mt19937 chance(seed);
    std::ranges::shuffle(track, chance);
    const auto shuffled = find(track);
    ASSERT_EQ(sorted.size(), shuffled.size());
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        EXPECT_EQ(sorted[i].start, shuffled[i].start);
        EXPECT_EQ(sorted[i].place, shuffled[i].place);
    }
}

TEST(FindStays, RefusesATrackOfOnePointAndSettingsOutOfRange) {
    base::Progress progress;
    const Track one{{{0, 0}, logs::moment("2026-10-03T07:00:00Z")}};
    EXPECT_EQ(rates::findStays(one, {}, progress).error().kind, base::ErrorKind::unusableInput);
    FindStaysSettings settings;
    settings.swing = units::Length::metres(1.0);
    EXPECT_EQ(rates::findStays(one, settings, progress).error().kind, base::ErrorKind::wrongUse);
}

} // namespace
