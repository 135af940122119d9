// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/years_part.h"

#include "app/days/what_to_open.h"
#include "app/open_water/water_file.h"
#include "app/widgets/plain_table.h"
#include "app/wording/year_words.h"
#include "core/water/steps/derive.h"

#include <QCheckBox>
#include <QLabel>
#include <QLayout>
#include <QPushButton>
#include <QSignalBlocker>

#include <utility>

namespace days::survey_day {

namespace {

constexpr int marksShown = 6;

} // namespace

YearsPart::YearsPart(SurveyContext context) : SurveyStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0); // It lies within a step.
    addHeading(tr("Since an earlier survey"));
    QPushButton* ask =
        makeButton(tr("Compare…"), {},
                   tr("Another file of this water, sounded before: where its bottom has risen or "
                      "fallen since by more than both surveys may be off"),
                   [this] { this->ask(); });
    leave_ =
        makeButton(tr("Leave it"), {}, tr("Nothing is compared any more"), [this] { leave(); });
    addRow({ask, leave_});
    isLevel_ = new QCheckBox(tr("What all has in common is a level"), this);
    isLevel_->setToolTip(
        tr("A level was noted wrongly, or not at all: the middle of all changes is "
           "taken off before anything is told"));
    connect(isLevel_, &QCheckBox::toggled, this, [this] { compare(); });
    addWide(isLevel_);
    doubts_ = addWarning();
    words_ = addWords();
    marks_ =
        new widgets::PlainTable({tr("Mark of yours"), tr("The bottom there")}, marksShown, this);
    marks_->setAccessibleName(tr("Marks since the earlier survey"));
    addWide(marks_);
    connect(&context_.open, &open_water::OpenWater::opened, this, [this] { leave(); });
    show(nullptr);
}

void YearsPart::leave() {
    earlier_.reset();
    comparedTo_.reset();
    const QSignalBlocker quiet(isLevel_);
    isLevel_->setChecked(false);
    show(nullptr);
}

void YearsPart::ask() {
    const QString file =
        askWhatToOpen(this, preferences::FileKind::water, tr("An earlier survey of this water"),
                      tr("Waters (*.gpkg)"));
    if (!file.isEmpty()) {
        compareWith(file);
    }
}

base::Result<YearsPart::Earlier> YearsPart::read(const QString& file, base::Progress& progress) {
    auto read =
        open_water::readWaterFile(file.toStdString(), progress, nullptr, store::Purpose::looking);
    if (!read) {
        return std::unexpected(read.error());
    }
    auto derived = water::derive(read->water, read->kept, water::Step::draw, progress);
    if (!derived) {
        return std::unexpected(derived.error());
    }
    if (!derived->drawn) {
        return base::fail(base::ErrorKind::unusableInput, "the earlier water cannot be drawn",
                          file.toStdString(), "open it, and see what it lacks");
    }
    return Earlier{std::move(read->water), derived->drawn};
}

void YearsPart::compareWith(const QString& file) {
    startJob<Earlier>(
        tr("Reading the earlier survey"),
        [file](base::Progress& progress) { return read(file, progress); },
        [this](base::Result<Earlier> earlier) {
            if (!earlier) {
                tellUnlessStopped(earlier.error());
                return;
            }
            earlier_ = std::make_shared<const Earlier>(std::move(*earlier));
            context_.chart.setShown(chart::LayerKind::change, true);
            isAsked_ = true;
            compare();
        });
}

void YearsPart::tellUnlessStopped(const base::Error& error) {
    if (error.kind != base::ErrorKind::cancelled) {
        tell(error);
    }
}

std::optional<YearsPart::ComparedTo> YearsPart::comparedNow() const {
    const auto drawn = context_.open.derived().drawn;
    if (!drawn || !context_.open.isCurrent(water::Step::draw)) {
        return std::nullopt; // Depths of before, read on a gauge of now, would make silt of
                             // nothing.
    }
    return ComparedTo{drawn, water().chartLevel, water().pinnedMarks};
}

void YearsPart::compare() {
    show(nullptr);
    comparedTo_ = comparedNow();
    if (!earlier_ || !comparedTo_) {
        return;
    }
    using water::CommonRise;
    startJob<water::YearsCompared>(
        tr("Comparing two surveys"),
        [water = context_.open.water(), derived = context_.open.derived(), earlier = earlier_,
         common = isLevel_->isChecked() ? CommonRise::isOfLevel
                                        : CommonRise::isChange](base::Progress& progress) {
            return water::compareYears(*water, derived, earlier->water, *earlier->drawn, common,
                                       progress);
        },
        [this, earlier = earlier_, isLevel = isLevel_->isChecked(),
         to = comparedTo_](base::Result<water::YearsCompared> years) {
            if (earlier != earlier_ || to != comparedTo_ || isLevel != isLevel_->isChecked()) {
                return; // Something else is being compared by now.
            }
            if (years) {
                show(std::make_shared<const water::YearsCompared>(std::move(*years)));
                if (std::exchange(isAsked_, false)) {
                    bringIntoView(this); // What is to be doubted must not stand below the fold.
                }
            } else {
                leave();
                tellUnlessStopped(years.error());
            }
        });
}

void YearsPart::show(std::shared_ptr<const water::YearsCompared> years) {
    for (QWidget* each : std::initializer_list<QWidget*>{leave_, isLevel_}) {
        each->setVisible(earlier_ != nullptr);
    }
    setWords(doubts_, years ? wording::doubtsOfYears(*years, words()).join('\n') : QString());
    setWords(words_, years      ? wording::saidOfYears(*years, words())
                     : earlier_ ? tr("Comparing…")
                                : QString());
    std::vector<QStringList> rows;
    for (std::size_t i = 0; years && i < years->marks.size(); ++i) {
        const water::MarkThen& mark = years->marks[i];
        rows.push_back({QString::fromStdString(mark.name), wording::saidOfMark(mark, words())});
    }
    marks_->setVisible(!rows.empty());
    marks_->setRows(std::move(rows));
    context_.chart.setYears(std::move(years));
}

DayStepLine YearsPart::refreshFrom(const ViewInput& input) {
    setVisible(input.derived.drawn != nullptr);
    if (earlier_ && comparedTo_ != comparedNow()) {
        compare(); // What was told is of the water as it was.
    } else if (const auto& years = context_.chart.content().years) {
        show(years); // In other units, perhaps.
    }
    return {};
}

} // namespace days::survey_day
