// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/stays_step.h"

#include "app/days/chart_link.h"
#include "app/days/looking_back/fish_entry_part.h"
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/stay_entry_part.h"
#include "app/days/looking_back/stay_form.h"
#include "app/days/looking_back/write_up_part.h"
#include "app/days/what_to_open.h"
#include "app/edits/add_stays.h"
#include "app/edits/change_stay.h"
#include "app/edits/remove_stay.h"
#include "app/open_water/now.h"
#include "app/widgets/plain_table.h"
#include "app/wording/counted_words.h"
#include "app/wording/log_words.h"
#include "core/water/steps/bring_in_log.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>

namespace days::looking_back {

namespace {
constexpr int rowsShown = 12;
} // namespace

StaysStep::StaysStep(DayContext context) : DayStep(context) {
    layEntries();
    layList();
    layButtons();
    form_ = new StayForm(context);
    addWide(form_);
    connect(&context_.chart, &ChartLink::selectionChanged, this, &StaysStep::takeChartsChoice);
}

void StaysStep::layEntries() {
    writeUp_ = new WriteUpPart(context_);
    addWide(writeUp_);
    stayEntry_ = new StayEntryPart(context_);
    addWide(stayEntry_);
    fishEntry_ = new FishEntryPart(context_);
    addWide(fishEntry_);
    connect(writeUp_, &WriteUpPart::chosen, this, [this] {
        if (const auto stay = writeUp_->chosenStay()) {
            choose(*stay, {});
        } else {
            showChosen();
        }
    });
    connect(writeUp_, &WriteUpPart::changeAsked, this, [this] { form_->focusFirst(); });
    connect(
        writeUp_, &WriteUpPart::entryAsked, this,
        [this](const KnownPlace& mark, const logbook::Stay& planned, const StayOffered& offered) {
            fishEntry_->leave();
            form_->hide();
            isOfStop_ = true;
            stayEntry_->beginPlanned(mark, planned, offered);
        });
    connect(writeUp_, &WriteUpPart::left, this, [this] {
        stayEntry_->leave();
        fishEntry_->leave();
        showList(true);
        goBack();
    });
    connect(stayEntry_, &StayEntryPart::written, this, [this](logbook::StayId stay) {
        if (isOfStop_) {
            writeUp_->take(stay);
        }
        choose(stay, {});
        goBack();
    });
    connect(fishEntry_, &FishEntryPart::written, this,
            [this](logbook::StayId stay, logbook::FishId run) {
                choose(stay, run);
                goBack();
            });
    connect(stayEntry_, &StayEntryPart::left, this, &StaysStep::goBack);
    connect(fishEntry_, &FishEntryPart::left, this, &StaysStep::goBack);
}

void StaysStep::layList() {
    empty_ = addWords();
    tripBox_ = new QComboBox(this);
    addField(tr("Trip"), tripBox_, tr("One day of the log, or all"));
    connect(tripBox_, &QComboBox::currentIndexChanged, this, [this](int index) {
        trip_ =
            index > 0 ? std::optional(trips_[static_cast<std::size_t>(index) - 1]) : std::nullopt;
        emit lineChanged();
    });
    table_ = new widgets::PlainTable({tr("Stay"), tr("Rods, bait"), tr("Fish")}, rowsShown, this);
    table_->setAccessibleName(tr("Stays and fish"));
    addWide(table_);
    connect(table_, &widgets::PlainTable::rowChosen, this, &StaysStep::chooseRow);
    connect(table_, &widgets::PlainTable::openAsked, this, [this] { form_->focusFirst(); });
    connect(table_, &widgets::PlainTable::removeAsked, this, [this](int row) {
        chooseRow(row);
        remove();
    });
}

void StaysStep::layButtons() {
    const auto withKey = [this](const QString& words, const QString& help, const QString& key,
                                const std::function<void()>& act) {
        // The key is that of the whole day: it opens this step first.
        return makeButton(words, {}, QStringLiteral("%1 (%2)").arg(help, key), act);
    };
    auto* add = withKey(tr("Add stay"), tr("Write down a stay"), QStringLiteral("Ctrl+B"),
                        [this] { addStay(); });
    auto* day = withKey(tr("Write up the day"), tr("Go through the marks of the sheet"),
                        QStringLiteral("Ctrl+D"), [this] { writeUp(); });
    auto* fish = withKey(tr("Fish"), tr("A fish of the chosen stay"), QStringLiteral("Ctrl+F"),
                         [this] { addRun(true); });
    auto* lost = withKey(tr("Lost run"), tr("A take that was lost"), QStringLiteral("Ctrl+L"),
                         [this] { addRun(false); });
    auto* gone = makeButton(tr("Remove"), {}, tr("Delete"), [this] { remove(); });
    auto* place = makeButton(tr("Move…"), {}, tr("Point on the chart at where the boat lay"),
                             [this] { askPlace(); });
    auto* log =
        makeButton(tr("Log…"), {}, tr("Read stays and fish from a LOG.csv"), [this] { askFile(); });
    addRow({day, add});
    addRow({fish, lost, gone});
    addRow({place, log});
    ofStay_ = {fish, lost, gone, place};
    ofList_ = {day, add, log};
}

void StaysStep::showTrips() {
    std::vector<units::Day> trips = tripDays(water());
    if (trip_ && !std::ranges::binary_search(trips, *trip_, std::greater())) {
        trip_.reset();
    }
    const QSignalBlocker quiet(tripBox_);
    if (trips != trips_ || tripBox_->count() == 0) {
        trips_ = std::move(trips);
        QStringList titles{
            tr("all %1").arg(wording::tripsCounted(static_cast<qint64>(trips_.size())))};
        for (const units::Day day : trips_) {
            titles += wording::Words::day(day);
        }
        tripBox_->clear();
        tripBox_->addItems(titles);
    }
    const auto at = trip_ ? std::ranges::find(trips_, *trip_) : trips_.end();
    tripBox_->setCurrentIndex(at == trips_.end() ? 0 : 1 + static_cast<int>(at - trips_.begin()));
}

DayStepLine StaysStep::refresh() {
    showTrips();
    rows_ = std::make_shared<const LogRows>(context_.open.water(), words(), trip_);
    const bool isEmpty = water().log.empty();
    setWords(empty_, isEmpty ? tr("No stays yet. Write up the day from its sheet, add a stay, "
                                  "bring in a log, or bring in the track of a day.")
                             : QString());
    table_->setRows(
        static_cast<int>(rows_->size()),
        [rows = rows_](int row) { return (*rows)[static_cast<std::size_t>(row)].cells; },
        [rows = rows_](int row) {
            return rows->isHeading(static_cast<std::size_t>(row)) ? widgets::RowLook::heading
                                                                  : widgets::RowLook::plain;
        });
    writeUp_->refresh();
    stayEntry_->refresh();
    fishEntry_->refresh();
    showList(!writeUp_->isUnderWay());
    showChosen();
    return {logLine(sumOf(water().log, water().clock)), false};
}

void StaysStep::showList(bool isShown) {
    const bool isEmpty = water().log.empty();
    table_->setVisible(isShown && !isEmpty);
    setFieldShown(tripBox_, isShown && !isEmpty);
    for (QPushButton* button : ofList_) {
        button->setVisible(isShown);
    }
}

LogRow StaysStep::chosen() const {
    const auto isThere = [this](logbook::StayId stay) {
        return logbook::positionOf(water().log, stay).has_value();
    };
    if (!isThere(stay_)) { // Taken back, and not brought again yet.
        return isThere(before_) ? LogRow{{}, before_, {}} : LogRow();
    }
    const auto& runs = water().log[*logbook::positionOf(water().log, stay_)].runs;
    const bool hasRun = std::ranges::find(runs, run_, &logbook::Fish::id) != runs.end();
    return {{}, stay_, hasRun ? run_ : logbook::FishId()};
}

void StaysStep::showChosen() {
    const LogRow shown = chosen();
    const auto row = rows_->rowOf(shown.stay, shown.run);
    table_->chooseQuietly(row ? static_cast<int>(*row) : -1);
    for (QPushButton* button : ofStay_) {
        button->setEnabled(shown.stay.isGiven());
    }
    const bool isOfWriteUp = !writeUp_->isUnderWay() || writeUp_->chosenStay() == shown.stay;
    form_->setVisible(!stayEntry_->isUnderWay() && !fishEntry_->isUnderWay());
    form_->show(isOfWriteUp ? shown.stay : logbook::StayId(), shown.run);
}

void StaysStep::chooseRow(int row) {
    const bool isRow = row >= 0 && row < static_cast<int>(rows_->size());
    const LogRow chosen = isRow ? (*rows_)[static_cast<std::size_t>(row)] : LogRow();
    take(chosen.stay, chosen.run);
    showChosen();
}

void StaysStep::take(logbook::StayId stay, logbook::FishId run) {
    if (stay != stay_) {
        before_ = stay.isGiven() ? chosen().stay : logbook::StayId();
    }
    stay_ = stay;
    run_ = run;
    const auto position = logbook::positionOf(water().log, stay);
    context_.chart.selectStay(position ? std::optional(stay) : std::nullopt);
    if (position && water().frame) {
        context_.chart.lookAt(water().frame->toWater(water().log[*position].place));
    }
}

void StaysStep::choose(logbook::StayId stay, logbook::FishId run) {
    take(stay, run);
    const auto position = logbook::positionOf(water().log, stay);
    if (position && trip_ && water().clock.dayOf(water().log[*position].start) != *trip_) {
        trip_.reset(); // It is not to be chosen and out of sight.
    }
    emit lineChanged();
}

void StaysStep::takeChartsChoice() {
    const auto stay = context_.chart.selection().stay;
    if (stay && *stay != stay_) {
        choose(*stay, {});
    }
}

void StaysStep::goBack() {
    showChosen();
    if (writeUp_->isUnderWay()) {
        writeUp_->focusRows();
    } else {
        table_->setFocus(Qt::OtherFocusReason);
    }
}

void StaysStep::addStay() {
    isOfStop_ = false;
    fishEntry_->leave();
    form_->hide();
    stayEntry_->begin(trip_.value_or(water().clock.dayOf(open_water::now())));
}

void StaysStep::addRun(bool isLanded) {
    const logbook::StayId stay =
        writeUp_->isUnderWay() ? writeUp_->chosenStay().value_or(logbook::StayId()) : chosen().stay;
    if (!stay.isGiven()) {
        emit context_.open.happened(
            writeUp_->isUnderWay()
                ? tr("Say first that you lay there: Space as planned, Return at other times.")
                : tr("Choose the stay of the fish first."));
        return;
    }
    stayEntry_->leave();
    form_->hide();
    fishEntry_->begin(stay, isLanded);
}

void StaysStep::writeUp() {
    stayEntry_->leave();
    fishEntry_->leave();
    writeUp_->begin();
    showList(false);
    showChosen();
}

void StaysStep::remove() {
    const LogRow gone = chosen();
    if (!gone.run.isGiven()) {
        edits::removeStay(context_.open, gone.stay);
        return;
    }
    edits::changeStay(
        context_.open, tr("Remove fish"), gone.stay, [run = gone.run](logbook::Stay& stay) {
            std::erase_if(stay.runs, [run](const logbook::Fish& each) { return each.id == run; });
        });
}

void StaysStep::askPlace() {
    context_.chart.ask<chart::PointMade>(
        tr("Point at where the boat lay"), chart::ToolKind::note,
        [this, id = chosen().stay](const chart::PointMade& made) {
            if (water().frame) {
                edits::changeStay(context_.open, tr("Move stay"), id,
                                  [at = water().frame->toEarth(made.at)](logbook::Stay& stay) {
                                      stay.place = at;
                                  });
            }
        });
}

void StaysStep::askFile() {
    const QString path = askWhatToOpen(this, preferences::FileKind::log, tr("Bring in log"),
                                       tr("Logs (*.csv);;All files (*)"));
    if (path.isEmpty()) {
        return;
    }
    startJob<water::LogBroughtIn>(
        tr("Reading the log"),
        [water = context_.open.water(), path](base::Progress& progress) {
            return water::bringInLog(*water, path.toStdString(), progress);
        },
        [this](base::Result<water::LogBroughtIn> read) {
            if (!read) {
                tell(read.error());
                return;
            }
            const QString done = wording::broughtIn(*read);
            const QString lost = wording::leftOutOf(*read, water());
            edits::addStays(context_.open, tr("Bring in log"), std::move(read->stays));
            if (lost.isEmpty()) {
                emit context_.open.happened(done);
            } else {
                tell({base::ErrorKind::unusableInput, (done + ' ' + lost).toStdString(), "",
                      "put the file right and bring it in once more"});
            }
        });
}

} // namespace days::looking_back
