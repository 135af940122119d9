// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/expected.h"

#include "sample-survey/text.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace sample {

namespace {

struct Tally {
    int trips = 0;
    int stays = 0;
    int blanks = 0;
    int runs = 0;
    int fish = 0;
    double rodHours = 0.0;
    double best_kg = 0.0;
};

void add(Tally& tally, const LoggedStay& stay) {
    ++tally.stays;
    int landed = 0;
    for (const LoggedFish& fish : stay.fish) {
        landed += fish.landed ? 1 : 0;
        tally.runs += fish.landed ? 0 : 1;
        tally.best_kg = std::max(tally.best_kg, fish.weight_kg);
    }
    tally.fish += landed;
    tally.blanks += landed == 0 ? 1 : 0;
    tally.rodHours += stay.rods * static_cast<double>(stay.end_s - stay.start_s) / 3600.0;
}

std::string tallyText(const Tally& tally) {
    return "\"stays\": " + std::to_string(tally.stays) +
           ", \"blanks\": " + std::to_string(tally.blanks) +
           ", \"lost_runs\": " + std::to_string(tally.runs) +
           ", \"fish\": " + std::to_string(tally.fish) +
           ", \"rod_hours\": " + fixed(tally.rodHours, 3) +
           ", \"best_kg\": " + fixed(tally.best_kg, 2);
}

std::string hiddenText() {
    std::vector<std::string> rates;
    for (const Ground ground : {Ground::open, Ground::streamBed, Ground::hump, Ground::bar,
                                Ground::shelfEdge, Ground::weedEdge}) {
        rates.push_back("{\"ground\": \"" + nameOf(ground) +
                        "\", \"fish_per_10_rod_hours\": " + fixed(hiddenRate(ground), 1) + "}");
    }
    std::vector<std::string> hours;
    double from = 6.0;
    for (const double to : {9.0, 11.0, 14.0, 16.0, 20.0}) {
        hours.push_back("{\"from_hour\": " + fixed(from, 0) + ", \"to_hour\": " + fixed(to, 0) +
                        ", \"factor\": " + fixed(hiddenHourFactor(from), 1) + "}");
        from = to;
    }
    std::vector<std::string> baits;
    for (const HiddenBait& bait : hiddenBaits()) {
        baits.push_back("{\"bait\": \"" + bait.name + "\", \"factor\": " + fixed(bait.factor, 2) +
                        "}");
    }
    return "  \"hidden_rates\": " + listText(rates, "  ") +
           ",\n  \"hidden_hour_factors\": " + listText(hours, "  ") +
           ",\n  \"hidden_bait_factors\": " + listText(baits, "  ") +
           ",\n  \"hidden_lost_runs_per_fish\": " + fixed(hiddenLostPerFish, 2);
}

/// Effort and fish between the hours at which the hidden factor changes, local clock.
std::vector<std::string> hourRows(const std::vector<LoggedStay>& stays) {
    const std::vector<int> edges{6, 9, 11, 14, 16, 20};
    const auto block = [&edges](std::int64_t utc_s) {
        const int hour = civil(utc_s + britishOffset_s(utc_s)).hour;
        std::size_t i = 0;
        while (i + 2 < edges.size() && hour >= edges[i + 1]) {
            ++i;
        }
        return i;
    };
    std::vector<Tally> tallies(edges.size() - 1);
    for (const LoggedStay& stay : stays) {
        for (std::int64_t t = stay.start_s; t < stay.end_s; t += 60) {
            tallies[block(t)].rodHours += stay.rods / 60.0;
        }
        for (const LoggedFish& fish : stay.fish) {
            Tally& tally = tallies[block(fish.time_s)];
            ++(fish.landed ? tally.fish : tally.runs);
        }
    }
    std::vector<std::string> rows;
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        rows.push_back("{\"from_hour\": " + std::to_string(edges[i]) +
                       ", \"to_hour\": " + std::to_string(edges[i + 1]) +
                       ", \"rod_hours\": " + fixed(tallies[i].rodHours, 3) +
                       ", \"lost_runs\": " + std::to_string(tallies[i].runs) +
                       ", \"fish\": " + std::to_string(tallies[i].fish) + "}");
    }
    return rows;
}

} // namespace

std::string expectedSoundingsText(const std::vector<SurveyDay>& days) {
    std::vector<std::string> rows;
    for (const SurveyDay& day : days) {
        std::map<std::string, int> soundings;
        std::map<std::string, std::set<int>> events;
        int clean = 0;
        int segments = 1;
        for (const Fix& fix : day.fixes) {
            segments += fix.afterGap ? 1 : 0;
            if (fix.fault == Fault::none) {
                ++clean;
            } else {
                ++soundings[nameOf(fix.fault)];
                events[nameOf(fix.fault)].insert(fix.event);
            }
        }
        std::string faults;
        for (const auto& [kind, count] : soundings) {
            faults += (faults.empty() ? "\"" : ", \"") + kind +
                      "\": {\"events\": " + std::to_string(events[kind].size()) +
                      ", \"soundings\": " + std::to_string(count) + "}";
        }
        const double hidden_m = day.facts.levelRead ? 0.0 : day.facts.level_m;
        rows.push_back("{\"day\": \"" + day.facts.date + "\", \"file\": \"" + day.facts.file +
                       "\", \"fixes\": " + std::to_string(day.fixes.size()) + ", \"clean\": " +
                       std::to_string(clean) + ", \"segments\": " + std::to_string(segments) +
                       ",\n     \"true_level_m\": " + fixed(day.facts.level_m, 2) +
                       ", \"level_read\": " + (day.facts.levelRead ? "true" : "false") +
                       ", \"drawn_minus_true_without_tying_m\": " + fixed(hidden_m, 2) +
                       ", \"tolerance_m\": 0.05,\n     \"faults\": {" + faults + "}}");
    }
    return "{\n  \"days\": " + listText(rows, "  ") +
           ",\n  \"depth_noise\": {\"fixed_m\": 0.05, \"share\": 0.005},\n  \"position_error_m\": "
           "1.5\n}\n";
}

std::string faultsText(const std::vector<SurveyDay>& days) {
    std::string text = "day,time,event,kind\n";
    for (const SurveyDay& day : days) {
        for (const Fix& fix : day.fixes) {
            if (fix.fault != Fault::none) {
                text += day.facts.date + "," + isoUtc(fix.time_s) + "," +
                        std::to_string(fix.event) + "," + nameOf(fix.fault) + "\n";
            }
        }
    }
    return text;
}

std::string expectedLogText(const std::vector<LoggedStay>& stays) {
    Tally all;
    std::map<std::string, Tally> byGround;
    std::map<std::string, Tally> byBait;
    std::map<std::string, int> bySpecies;
    for (const LoggedStay& stay : stays) {
        add(all, stay);
        add(byGround[nameOf(stay.ground)], stay);
        add(byBait[stay.bait], stay);
        all.trips = std::max(all.trips, stay.trip);
        for (const LoggedFish& fish : stay.fish) {
            if (fish.landed) {
                ++bySpecies[fish.species];
            }
        }
    }
    std::vector<std::string> grounds;
    for (const auto& [name, tally] : byGround) {
        grounds.push_back("{\"ground\": \"" + name + "\", " + tallyText(tally) + "}");
    }
    std::vector<std::string> baits;
    for (const auto& [name, tally] : byBait) {
        baits.push_back("{\"bait\": \"" + name + "\", " + tallyText(tally) + "}");
    }
    std::string species;
    for (const auto& [name, count] : bySpecies) {
        species += (species.empty() ? "\"" : ", \"") + name + "\": " + std::to_string(count);
    }
    std::vector<std::string> where;
    for (const LoggedStay& stay : stays) {
        where.push_back("{\"stay\": " + std::to_string(stay.number) +
                        ", \"trip\": " + std::to_string(stay.trip) + ", \"ground\": \"" +
                        nameOf(stay.ground) + "\"}");
    }
    return "{\n" + hiddenText() + ",\n  \"trips\": " + std::to_string(all.trips) +
           ",\n  \"whole_log\": {" + tallyText(all) + "},\n  \"fish_by_species\": {" + species +
           "},\n  \"by_ground\": " + listText(grounds, "  ") +
           ",\n  \"by_bait\": " + listText(baits, "  ") +
           ",\n  \"by_hour\": " + listText(hourRows(stays), "  ") +
           ",\n  \"ground_of_stay\": " + listText(where, "  ") + "\n}\n";
}

std::string expectedStaysText(const DayTrack& track) {
    const auto row = [](const TrueStay& stay) {
        return "{\"start\": \"" + isoUtc(stay.start_s) + "\", \"end\": \"" + isoUtc(stay.end_s) +
               "\", \"minutes\": " + std::to_string((stay.end_s - stay.start_s) / 60) + ", " +
               lonLatKeys(stay.at) + "}";
    };
    std::vector<std::string> rows;
    for (const TrueStay& stay : track.stays) {
        rows.push_back(row(stay));
    }
    return "{\n  \"stays\": " + listText(rows, "  ") +
           ",\n  \"time_tolerance_s\": 90,\n  \"place_tolerance_m\": 6,\n  " +
           "\"no_stay\": " + row(track.pause) + "\n}\n";
}

} // namespace sample
