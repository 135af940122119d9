// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/day_track.h"

#include "sample-survey/survey_plan.h"
#include "sample-survey/text.h"

#include <algorithm>
#include <stdexcept>

namespace sample {

namespace {

constexpr int every_s = 10;

/// Lays down fixes while the boat moves and while it lies.
class Recorder {
public:
    Recorder(Chance& chance, std::int64_t start_s)
        : chance_(&chance), east_(chance, 1.1, 200.0), north_(chance, 1.1, 200.0), now_s_(start_s) {
    }

    void move(const Line& way, double speed_m_s) {
        const Line line = evenly(way, 1.0);
        Drift throttle(*chance_, 0.12, 40.0);
        for (double at_m = 0.0; at_m < static_cast<double>(line.size() - 1);) {
            fix(line[static_cast<std::size_t>(at_m)]);
            at_m += every_s * std::max(0.4, speed_m_s + throttle.after(every_s));
        }
        here_ = line.back();
    }

    TrueStay lie(int minutes, double swing_m, int gapAfter_min = 0, int gap_min = 0) {
        Drift swingEast(*chance_, swing_m, 90.0);
        Drift swingNorth(*chance_, 0.6 * swing_m, 70.0);
        TrueStay stay{now_s_, now_s_ + minute_s * minutes, here_};
        const std::int64_t gapFrom_s = now_s_ + minute_s * gapAfter_min;
        while (now_s_ < stay.end_s) {
            const Point swing{swingEast.after(every_s), swingNorth.after(every_s)};
            if (gap_min > 0 && now_s_ >= gapFrom_s && now_s_ < gapFrom_s + minute_s * gap_min) {
                now_s_ = gapFrom_s + minute_s * gap_min;
                gap_ = true;
            }
            fix(here_ + swing);
        }
        return stay;
    }

    Point here() const { return here_; }
    std::vector<TrackPoint> points;

private:
    void fix(Point truly) {
        const double east_m = east_.after(every_s);
        const double north_m = north_.after(every_s);
        const double jitterEast_m = 0.2 * chance_->normal();
        const double jitterNorth_m = 0.2 * chance_->normal();
        const Point error{east_m + jitterEast_m, north_m + jitterNorth_m};
        points.push_back({now_s_, truly + error, gap_});
        gap_ = false;
        now_s_ += every_s;
    }

    Chance* chance_;
    Drift east_;
    Drift north_;
    std::int64_t now_s_;
    Point here_;
    bool gap_ = false;
};

} // namespace

DayTrack fishOneDay(const Bottom& bottom, const Waterway& waterway, Chance& chance) {
    DayTrack track;
    Recorder boat(chance, secondsOf(2026, 10, 17, 7, 4));
    const auto go = [&](Point from, Point to) { boat.move(waterway.way(from, to), 1.5); };
    const Point first{518, 62};
    const Point second{262, 448};
    const Point third{58, 198};
    const Point fourth{-486, 410};
    go(launchPlace(), first);
    track.stays.push_back(boat.lie(84, 1.7));
    go(first, second);
    track.stays.push_back(boat.lie(41, 1.9));
    const Point halfWay{190, 330};
    go(second, halfWay);
    track.pause = boat.lie(4, 1.0);
    go(halfWay, third);
    track.stays.push_back(boat.lie(66, 2.0, 37, 6));
    go(third, fourth);
    track.stays.push_back(boat.lie(27, 1.5));
    go(fourth, launchPlace());
    track.points = boat.points;
    for (const TrueStay& stay : track.stays) {
        if (bottom.depth_m(stay.at) < 1.2) {
            throw std::logic_error("a stay of the day's track lies aground");
        }
    }
    return track;
}

std::string trackText(const DayTrack& track) {
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<gpx version=\"1.1\" creator=\"make_sample\" "
                       "xmlns=\"http://www.topografix.com/GPX/1/1\">\n"
                       "<metadata><desc>Invented from end to end</desc></metadata>\n"
                       "<trk><name>2026-10-17</name>\n<trkseg>\n";
    for (const TrackPoint& point : track.points) {
        if (point.afterGap) {
            text += "</trkseg>\n<trkseg>\n";
        }
        const LonLat place = toLonLat(point.at);
        text += "<trkpt lat=\"" + fixed(place.lat_deg, 6) + "\" lon=\"" + fixed(place.lon_deg, 6) +
                "\"><time>" + isoUtc(point.time_s) + "</time></trkpt>\n";
    }
    return text + "</trkseg>\n</trk>\n</gpx>\n";
}

} // namespace sample
