// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/season_box.h"

#include <QSignalBlocker>

#include <array>

namespace days::looking_back {

namespace {

/// The first and last month of each; the last day is the last of its month. Common practice of
/// meteorology (no source).
std::optional<logbook::Season> seasonAt(int index) {
    using std::chrono::day;
    using std::chrono::February;
    using std::chrono::month;
    if (index <= 0) {
        return std::nullopt;
    }
    const unsigned first = 3 * static_cast<unsigned>(index);
    const month last((first + 1) % 12 + 1);
    const unsigned days =
        last == February
            ? 29U
            : static_cast<unsigned>(std::chrono::year_month_day_last(
                                        std::chrono::year(2024), std::chrono::month_day_last(last))
                                        .day());
    return logbook::Season{month(first) / day(1), last / day(days)};
}

} // namespace

SeasonBox::SeasonBox(LogQuestion& question, QWidget* parent) : QComboBox(parent) {
    addItems({tr("all year"), tr("spring, Mar to May"), tr("summer, Jun to Aug"),
              tr("autumn, Sep to Nov"), tr("winter, Dec to Feb")});
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(6);
    connect(this, &QComboBox::currentIndexChanged, &question, [&question](int index) {
        water::ReviewQuestion asked = question.question();
        asked.season = seasonAt(index);
        question.ask(asked);
    });
    connect(&question, &LogQuestion::changed, this, [this, &question] {
        const QSignalBlocker quiet(this);
        for (int i = 0; i < count(); ++i) {
            if (seasonAt(i) == question.question().season) {
                setCurrentIndex(i);
            }
        }
    });
}

} // namespace days::looking_back
