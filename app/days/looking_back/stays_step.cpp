// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/stay_form.h"
#include "app/days/looking_back/steps.h"
#include "app/edits/add_stays.h"
#include "app/edits/change_stay.h"
#include "app/edits/remove_stay.h"
#include "app/open_water/now.h"
#include "app/widgets/plain_table.h"
#include "app/wording/log_words.h"
#include "core/water/steps/bring_in_log.h"

#include <QFileDialog>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <cmath>

namespace days::looking_back {

namespace {

constexpr int rowsShown = 12;

class StaysStep : public DayStep {
public:
    explicit StaysStep(DayContext context) : DayStep(context) {
        empty_ = addWords();
        table_ =
            new widgets::PlainTable({tr("Stay"), tr("Rods, bait"), tr("Fish")}, rowsShown, this);
        addWide(table_);
        connect(table_, &widgets::PlainTable::rowChosen, this, &StaysStep::choose);
        connect(table_, &widgets::PlainTable::removeAsked, this, [this](int row) {
            choose(row);
            remove();
        });
        addRow(
            {makeButton(tr("Add stay"), QStringLiteral("Ctrl+B"),
                        tr("A stay at the chosen mark, or where you point"), [this] { addStay(); }),
             fish_ = makeButton(tr("Fish"), QStringLiteral("Ctrl+F"),
                                tr("A fish of the chosen stay"), [this] { addRun(true); }),
             lost_ = makeButton(tr("Lost run"), QStringLiteral("Ctrl+L"),
                                tr("A take that was lost"), [this] { addRun(false); })});
        addRow({remove_ = makeButton(tr("Remove"), QString(), tr("Delete"), [this] { remove(); }),
                place_ = makeButton(tr("Move…"), QString(),
                                    tr("Point on the chart at where the boat lay"),
                                    [this] { askPlace(); }),
                makeButton(tr("Log…"), QString(), tr("Read stays and fish from a LOG.csv"),
                           [this] { askFile(); })});
        form_ = new StayForm(context);
        addWide(form_);
    }

    DayStepLine refresh() override {
        rows_ = LogRows(water().log, water().clock, words());
        const bool isEmpty = rows_.size() == 0;
        setWords(empty_, isEmpty ? tr("No stays yet. Add one, bring in a log, or bring in the "
                                      "track of a day.")
                                 : QString());
        const auto chosen = rows_.rowOf(stay_, run_);
        if (!chosen) {
            stay_ = {};
            run_ = {};
        }
        table_->setVisible(!isEmpty);
        table_->setRows(static_cast<int>(rows_.size()), [rows = rows_](int row) {
            return rows[static_cast<std::size_t>(row)].cells;
        });
        table_->chooseQuietly(chosen ? static_cast<int>(*chosen) : -1);
        showChosen();
        return {logLine(sumOf(water().log, water().clock)), false};
    }

private:
    void showChosen() {
        for (QPushButton* button : {fish_, lost_, remove_, place_}) {
            button->setEnabled(stay_.isGiven());
        }
        form_->show(stay_, run_);
    }

    void choose(int row) {
        const bool isRow = row >= 0 && row < static_cast<int>(rows_.size());
        const LogRow chosen = isRow ? rows_[static_cast<std::size_t>(row)] : LogRow();
        stay_ = chosen.stay;
        run_ = chosen.run;
        context_.chart.selectStay(isRow ? std::optional(stay_) : std::nullopt);
        showChosen();
    }

    void addStayAt(geo::LonLat place) {
        logbook::Stay stay = newStay(water(), open_water::now());
        stay.place = place;
        stay_ = edits::addStays(context_.open, tr("Add stay"), {stay});
        run_ = {};
        context_.chart.selectStay(stay_);
        emit lineChanged();
        form_->focusFirst(); // its times are to be put right
    }

    void addStay() {
        const auto planned = context_.open.planned();
        const auto rank = context_.chart.content().selection.mark;
        if (planned && rank) {
            const auto mark = std::ranges::find(planned->marks, *rank, &marks::Mark::rank);
            if (mark != planned->marks.end()) {
                addStayAt(mark->lonLat);
                return;
            }
        }
        context_.chart.ask<chart::PointMade>(tr("Point at where the boat lay"),
                                             chart::ToolKind::note,
                                             [this](const chart::PointMade& made) {
                                                 if (water().frame) {
                                                     addStayAt(water().frame->toEarth(made.at));
                                                 }
                                             });
    }

    void addRun(bool isLanded) {
        edits::changeStay(context_.open, isLanded ? tr("Add fish") : tr("Add lost run"), stay_,
                          [isLanded](logbook::Stay& stay) {
                              logbook::Fish run;
                              run.landed = isLanded;
                              stay.runs.push_back(run);
                          });
        const auto position = logbook::positionOf(water().log, stay_);
        // A water that may only be looked at took no fish, and may have none there.
        if (position && !water().log[*position].runs.empty()) {
            run_ = std::ranges::max(water().log[*position].runs, {}, &logbook::Fish::id).id;
        }
        emit lineChanged();
        form_->focusFirst();
    }

    void remove() {
        if (!run_.isGiven()) {
            edits::removeStay(context_.open, stay_);
            return;
        }
        edits::changeStay(
            context_.open, tr("Remove fish"), stay_, [run = run_](logbook::Stay& stay) {
                std::erase_if(stay.runs,
                              [run](const logbook::Fish& each) { return each.id == run; });
            });
    }

    void askPlace() {
        context_.chart.ask<chart::PointMade>(
            tr("Point at where the boat lay"), chart::ToolKind::note,
            [this, id = stay_](const chart::PointMade& made) {
                if (water().frame) {
                    edits::changeStay(context_.open, tr("Move stay"), id,
                                      [at = water().frame->toEarth(made.at)](logbook::Stay& stay) {
                                          stay.place = at;
                                      });
                }
            });
    }

    void askFile() {
        const QString path = QFileDialog::getOpenFileName(this, tr("Bring in log"), {},
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

    LogRows rows_;
    logbook::StayId stay_;
    logbook::FishId run_;
    QLabel* empty_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QPushButton* fish_ = nullptr;
    QPushButton* lost_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* place_ = nullptr;
    StayForm* form_ = nullptr;
};

} // namespace

DayStep* makeStaysStep(DayContext context) {
    return new StaysStep(context);
}

} // namespace days::looking_back
