// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_nmea.h"

#include "core/readers/line_reader.h"
#include "core/readers/nmea_fix.h"
#include "core/readers/nmea_sentence.h"
#include "core/readers/nmea_track.h"
#include "core/readers/sounding_collector.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace readers {

namespace {

bool isOfUse(std::string_view type) {
    constexpr std::array types{"GGA", "GLL", "RMC", "ZDA", "DPT", "DBT", "DBS", "DBK", "MTW"};
    return std::ranges::any_of(types, [type](std::string_view known) { return type == known; });
}

/// Listens to the sentences of one log.
class Listener {
public:
    /// One line, which may hold junk, a TAG block or a time before the sentence, or more than one.
    void hearLine(std::string_view line, std::size_t number) {
        for (auto text = nextSentence(line); !text.empty(); text = nextSentence(line)) {
            hearSentence(text, number);
        }
    }

    base::Result<ReadSoundings> finish(const std::string& where,
                                       const SoundingFileSettings& settings);

private:
    void hearSentence(std::string_view text, std::size_t line) {
        if (!takeApart(text, sentence_) || !isOfUse(sentence_.type)) {
            return;
        }
        if (sentence_.sum == NmeaSentence::Sum::wrong) {
            general_.refuse("bad_checksum", line, text);
            return;
        }
        // A log either has checksums or has none; one sentence without is cut short.
        sumsAreUsual_ = sumsAreUsual_ || sentence_.sum == NmeaSentence::Sum::right;
        if (sentence_.sum == NmeaSentence::Sum::absent && sumsAreUsual_) {
            general_.refuse("truncated", line, text);
            return;
        }
        if (sentence_.type == "MTW") {
            hearTemperature();
        } else if (sentence_.type[0] == 'D') {
            hearDepth(line);
        } else {
            hearPosition(line);
        }
    }

    void hearPosition(std::size_t line) {
        const NmeaFix fix = nmeaFixIn(sentence_).value_or(NmeaFix{});
        const bool isHeard = fix.timeOfDay_s && track_.hearTime(*fix.timeOfDay_s, fix.date);
        if (fix.isClockOnly || (fix.timeOfDay_s && !isHeard)) {
            return;
        }
        if (!fix.isValid) {
            track_.hearVoidFix();
            return;
        }
        if (!fix.place) {
            general_.refuse("bad_position", line, sentence_.whole);
            track_.hearVoidFix();
            return;
        }
        if (!fix.timeOfDay_s) {
            track_.tick();
        }
        track_.hearFix(*fix.place);
    }

    void hearDepth(std::size_t line) {
        const NmeaSentence& s = sentence_;
        const std::string_view name = s.whole.substr(1, 5);
        std::optional<double> depth_m;
        bool isBelowSurface = s.type == "DBS";
        if (s.type == "DPT") {
            depth_m = s.number(1);
            // Positive: from the transducer up to the water line. Negative: down to the keel.
            const double offset_m = s.number(2).value_or(0.0);
            if (depth_m && offset_m > 0.0) {
                *depth_m += offset_m;
                isBelowSurface = true;
            }
        } else if (const auto metres = s.number(3)) {
            depth_m = metres;
        } else if (const auto feet = s.number(1)) {
            depth_m = units::Depth::feet(*feet).inMetres();
        } else if (const auto fathoms = s.number(5)) {
            depth_m = units::Depth::fathoms(*fathoms).inMetres();
        }
        if (depth_m) {
            track_.hearDepth(name, *depth_m, isBelowSurface, line, s.whole);
        } else {
            track_.hearNoDepth(name, line, s.whole);
        }
    }

    void hearTemperature() {
        const auto celsius = sentence_.number(1);
        if (celsius && *celsius > -3.0 && *celsius < 45.0) {
            temperatureSum_c_ += *celsius;
            ++temperatures_;
        }
    }

    NmeaDepths* chosenSource(const std::string& wanted);
    void fill(SoundingCollector& collector, NmeaDepths& from);

    NmeaSentence sentence_;
    NmeaTrack track_;
    ReadingReport general_;
    bool sumsAreUsual_ = false;
    double temperatureSum_c_ = 0.0;
    std::size_t temperatures_ = 0;
};

/// The more of two sources: more soundings; of as many, the one that says more about its reference.
bool isRicher(const NmeaDepths& a, const NmeaDepths& b) {
    const auto rank = [](const NmeaDepths& s) {
        return s.name.ends_with("DPT") ? 3 : s.name.ends_with("DBS") ? 2 : s.name.ends_with("DBT");
    };
    return a.placed.size() != b.placed.size() ? a.placed.size() > b.placed.size()
                                              : rank(a) > rank(b);
}

/// GPS counts its weeks to 1024 and begins again; a receiver that has not followed says dates that
/// are 7168 days too early. Nothing in the log proves it, so that it is said and not changed.
void noteWeekNumber(std::optional<std::int64_t> epoch_ms, ReadingReport& report) {
    // Who sounds with a logger has most likely done so since; 2009 is seen again in 2029.
    constexpr std::chrono::sys_days oddlyEarly{std::chrono::year{2010} / 1 / 1};
    constexpr std::chrono::days weeks1024{7168};
    if (!epoch_ms) {
        return;
    }
    const auto day =
        std::chrono::floor<std::chrono::days>(units::Moment(std::chrono::milliseconds(*epoch_ms)));
    if (day < oddlyEarly) {
        report.notes.push_back(fmt::format(
            "the log begins on {}: if that should be {}, the receiver's count of GPS weeks has run "
            "over (1024 weeks); times were left as they are",
            units::isoText(units::Day(day)), units::isoText(units::Day(day + weeks1024))));
    }
}

NmeaDepths* Listener::chosenSource(const std::string& wanted) {
    std::vector<NmeaDepths>& sources = track_.sources();
    std::stable_sort(sources.begin(), sources.end(), isRicher);
    if (wanted.empty()) {
        return sources.empty() ? nullptr : &sources.front();
    }
    const auto at = std::ranges::find(sources, wanted, &NmeaDepths::name);
    return at == sources.end() ? nullptr : &*at;
}

void Listener::fill(SoundingCollector& collector, NmeaDepths& from) {
    ReadSoundings& read = collector.read();
    read.depthSource = from.name;
    read.reference =
        from.isBelowSurface ? DepthReference::belowSurface : DepthReference::belowTransducer;
    read.report.read = from.heard + general_.refusedCount();
    for (const auto& [reason, rows] : from.report.refused) {
        read.report.refused[reason] = rows;
    }
    if (from.name.ends_with("DBK")) {
        read.report.notes.emplace_back(
            "the depths count from the keel: give the keel's depth as draft");
    }
    const auto epoch_ms = track_.epoch_ms();
    if (!epoch_ms) {
        read.report.notes.emplace_back("the log has no date: its soundings are without time");
    }
    noteWeekNumber(epoch_ms, read.report);
    const PlacedDepth* before = nullptr;
    for (const PlacedDepth& depth : from.placed) {
        if (before != nullptr &&
            (depth.time_ms < before->time_ms ||
             static_cast<double>(depth.time_ms - before->time_ms) > passGap_s * 1000.0)) {
            collector.breakTrack();
        }
        before = &depth;
        RawSounding row{depth.place.lon_deg, depth.place.lat_deg, depth.depth_m, {}};
        if (epoch_ms) {
            row.time = units::Moment(std::chrono::milliseconds(*epoch_ms + depth.time_ms));
        }
        collector.take(row, depth.line, from.name);
    }
}

base::Result<ReadSoundings> Listener::finish(const std::string& where,
                                             const SoundingFileSettings& settings) {
    track_.finish();
    SoundingCollector collector(SoundingFileKind::nmea, where);
    collector.report() = general_;
    collector.report().read = general_.refusedCount();
    NmeaDepths* chosen = chosenSource(settings.depthSource);
    for (const NmeaDepths& source : track_.sources()) {
        collector.read().depthSources.push_back({source.name, source.placed.size()});
    }
    if (chosen == nullptr && !settings.depthSource.empty()) {
        std::string names;
        for (const NmeaDepths& source : track_.sources()) {
            names += " " + source.name;
        }
        return base::fail(base::ErrorKind::wrongUse,
                          fmt::format("the log has no depths from {}", settings.depthSource), where,
                          names.empty() ? "it has no depths at all" : "choose one of" + names);
    }
    std::size_t heard = 0;
    if (chosen != nullptr) {
        for (NmeaDepths& source : track_.sources()) {
            if (&source != chosen) {
                source.placed = {}; // A long log need not be held twice.
            }
        }
        heard = chosen->heard;
        fill(collector, *chosen);
    }
    if (temperatures_ > 0) {
        collector.read().waterTemperature =
            units::Temperature::celsius(temperatureSum_c_ / static_cast<double>(temperatures_));
    }
    return collector.finish(settings, track_.fixCount(), heard);
}

} // namespace

base::Result<ReadSoundings> readNmea(const std::filesystem::path& path,
                                     const SoundingFileSettings& settings,
                                     base::Progress& progress) {
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    progress.begin("reading the log");
    Listener listener;
    std::string_view line;
    while (lines->next(line)) {
        listener.hearLine(line, lines->lineNumber());
        if (!lines->tell(progress)) {
            return std::unexpected(base::cancelled());
        }
    }
    return listener.finish(path.filename().string(), settings);
}

} // namespace readers
