// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/produced_view.h"

#include "app/days/looking_back/known_places.h"
#include "app/days/looking_back/log_view.h"
#include "app/wording/sayings.h"
#include "app/wording/tongue.h"
#include "core/logbook/log_columns.h"
#include "core/water/questions/log_groups.h"
#include "core/water/questions/sum_up_log.h"

#include <algorithm>
#include <map>

namespace days::looking_back {

using water::ReviewBy;
using wording::Words;

namespace {

/// Places and baits have none: of them those come first that matter.
bool hasOwnOrder(ReviewBy by) {
    return by != ReviewBy::section && by != ReviewBy::zone && by != ReviewBy::mark &&
           by != ReviewBy::bait;
}

using Names = std::map<std::string, QString>;

/// Where two marks would be called alike, their number tells them apart.
Names namesOfMarks(const water::Water& water, const Words& words) {
    Names names;
    std::map<QString, int> uses;
    const auto places = water::placesOfMarks(water);
    const PlaceNames known(water);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const QString called = known.of(places[i], words);
        const QString base = called.isEmpty() ? wording::Tongue::tr("mark %1").arg(i + 1) : called;
        const int use = ++uses[base];
        names["mark " + std::to_string(i + 1)] =
            use == 1 ? base : QStringLiteral("%1 (%2)").arg(base).arg(use);
    }
    return names;
}

Names namesOfBands(const contours::Bands& bands, const Words& words) {
    Names names;
    for (std::size_t band = 0; band < bands.count(); ++band) {
        names[water::bandName(bands, band)] = words.depthRange(bands.from(band), bands.to(band));
    }
    return names;
}

/// "8 to 10 °C" in the user's units.
QString warmthName(const std::string& name, const Words& words) {
    const QString text = QString::fromStdString(name);
    const QStringList parts = text.split(' ');
    bool isFrom = false;
    bool isTo = false;
    const double from = parts.value(0).toDouble(&isFrom);
    const double to = parts.value(2).toDouble(&isTo);
    if (words.isMetric() || !isFrom || !isTo) {
        return wording::Tongue::ofCore(name);
    }
    return wording::Tongue::tr("%1 to %2")
        .arg(words.wholeTemperature(units::Temperature::celsius(from)),
             words.wholeTemperature(units::Temperature::celsius(to)));
}

QString nameOf(const rates::RateRow& row, ReviewBy by, const Names& names, const Words& words) {
    const auto known = names.find(row.name);
    if (known != names.end()) {
        return known->second;
    }
    return row.name.ends_with(" °C") ? warmthName(row.name, words)
                                     : wording::rowCalled(row.name, by);
}

/// A field of a table; what a spreadsheet would take for a formula is a text.
QString tableField(const QString& text) {
    QString field = QString::fromStdString(logbook::guarded(text.toStdString()));
    if (field.contains(',') || field.contains('"') || field.contains('\n')) {
        field.replace('"', QStringLiteral("\"\""));
        field = '"' + field + '"';
    }
    return field;
}

} // namespace

QString titleOf(ReviewBy by) {
    // Those that are not called on the screen as they are in a command.
    const std::map<std::string_view, QString> titles{
        {"zone", wording::Tongue::tr("kind of place")},
        {"band", wording::Tongue::tr("depth")},
        {"temperature", wording::Tongue::tr("water temperature")},
        {"days_since", wording::Tongue::tr("days since last fished")}};
    const std::string_view name = water::nameOf(by);
    const auto title = titles.find(name);
    return title != titles.end() ? title->second : wording::Tongue::ofCore(std::string(name));
}

std::vector<ProducedRow> rowsThatMatter(const rates::RateTable& table, ReviewBy by,
                                        const water::Water& water, const contours::Bands& bands,
                                        const Words& words) {
    const Names names = by == ReviewBy::mark   ? namesOfMarks(water, words)
                        : by == ReviewBy::band ? namesOfBands(bands, words)
                                               : Names();
    std::vector<ProducedRow> rows;
    for (const rates::RateRow& row : table.rows) {
        rows.push_back({nameOf(row, by, names, words), row});
    }
    if (!hasOwnOrder(by)) {
        std::ranges::stable_sort(rows, std::greater(), [](const ProducedRow& row) {
            return row.counted.shrunk ? row.counted.shrunk->per10RodHours : 0.0;
        });
    }
    std::ranges::stable_partition(rows, &ProducedRow::isTried);
    return rows;
}

rates::RateTable calledByTheUser(const std::vector<ProducedRow>& rows, rates::RateTable table) {
    table.rows.clear();
    for (const ProducedRow& row : rows) {
        table.rows.push_back(row.counted);
        table.rows.back().name = row.name.toStdString();
    }
    return table;
}

QStringList producedCells(const rates::RateRow& row, const QString& name) {
    return {name, wording::Tongue::number(row.rodHours, 0),
            wording::Tongue::tr("%1 of %2").arg(row.blanks).arg(row.stays),
            QString::number(row.fish),
            row.shrunk ? Words::rate(row.shrunk->per10RodHours) : QString()};
}

QString untriedWords(std::size_t untried, const rates::RateTable& table) {
    if (untried == 0) {
        return {};
    }
    const auto count = static_cast<qint64>(untried);
    return table.untried
               ? wording::Tongue::counted("%n more were never tried: %1 is to be expected of each.",
                                          "%n more was never tried: %1 is to be expected.", count)
                     .arg(rateWords(table.untried))
               : wording::Tongue::counted("%n more were never tried.", "%n more was never tried.",
                                          count);
}

QString comparedWords(const ProducedRow& chosen, const ProducedRow& other) {
    const QString rates = wording::Tongue::tr("%1 gave %2, %3 gave %4 fish per 10 rod-hours.")
                              .arg(chosen.name, rateWords(chosen.counted.rate), other.name,
                                   rateWords(other.counted.rate));
    const auto compared = water::compareRows(calledByTheUser({chosen, other}, {}),
                                             chosen.name.toStdString(), other.name.toStdString());
    return compared ? rates + ' ' + wording::said(*compared) : rates;
}

QString producedTable(const std::vector<ProducedRow>& rows, const Words& words) {
    QString text =
        QStringLiteral("name,rod_hours,stays,blanks,runs,fish,best,rate_per_10_rod_hours,"
                       "rate_low,rate_high,steadied_rate,steadied_low,steadied_high\r\n");
    const auto figures = [](const std::optional<rates::Rate>& rate) {
        return rate ? QStringLiteral("%1,%2,%3")
                          .arg(rate->per10RodHours, 0, 'f', 4)
                          .arg(rate->low, 0, 'f', 4)
                          .arg(rate->high, 0, 'f', 4)
                    : QStringLiteral(",,");
    };
    for (const ProducedRow& row : rows) {
        const rates::RateRow& its = row.counted;
        text += QStringList{tableField(row.name),
                            QString::number(its.rodHours, 'f', 3),
                            QString::number(its.stays),
                            QString::number(its.blanks),
                            QString::number(its.runs),
                            QString::number(its.fish),
                            its.best ? tableField(words.weight(*its.best)) : QString(),
                            figures(its.rate),
                            figures(its.shrunk)}
                    .join(',') +
                QStringLiteral("\r\n");
    }
    return text;
}

} // namespace days::looking_back
