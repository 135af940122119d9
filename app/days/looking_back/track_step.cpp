// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/steps.h"
#include "app/days/what_to_open.h"
#include "app/edits/add_stays.h"
#include "app/wording/counted_words.h"
#include "app/wording/doubts.h"
#include "core/units/written_time.h"
#include "core/water/steps/bring_in_log.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>

#include <algorithm>

namespace days::looking_back {

namespace {

struct TrackBroughtIn {
    rates::Track track;
    water::LogBroughtIn found;
};

class TrackStep : public TrackTaker {
public:
    explicit TrackStep(DayContext context) : TrackTaker(context) {
        setWords(addWords(), tr("Bring in the track of a fishing day: where the boat lay still is "
                                "offered as stays. Blanks count as much as catches."));
        rods_ = new QSpinBox(this);
        rods_->setRange(0, 8);
        rods_->setSpecialValueText(tr("not known"));
        addField(tr("Rods"), rods_,
                 tr("Rods that were out. A stay whose rods are not known counts in no rate"));
        addRow({makeButton(tr("Bring in track…"), QStringLiteral("Ctrl+T"), tr("Read a GPX file"),
                           [this] { askFile(); })});
        list_ = new QListWidget(this);
        list_->setAccessibleName(tr("Stays found"));
        addWide(list_);
        connect(list_, &QListWidget::currentRowChanged, this, [this] { showChosen(); });
        connect(list_, &QListWidget::itemChanged, this, &TrackStep::takeTick);
        layTimes();
        add_ = makeButton(tr("Add as blanks"), QStringLiteral("Ctrl+Return"),
                          tr("Put the ticked stays into the log; fill in the fish there"),
                          [this] { addTicked(); });
        addRow({add_});
        // What was found belongs to the water that it was found on.
        connect(&context_.open, &open_water::OpenWater::opened, this, [this] { offer({}); });
    }

    DayStepLine refresh() override {
        list_->setVisible(!found_.empty());
        add_->setEnabled(!found_.empty());
        showChosen();
        return {found_.empty()
                    ? tr("none brought in")
                    : tr("%1 found").arg(wording::staysCounted(static_cast<qint64>(found_.size()))),
                false};
    }

    void take(const QString& path) override { read(path.toStdString()); }

private:
    void askFile() {
        const QString path = askWhatToOpen(this, preferences::FileKind::track, tr("Bring in track"),
                                           tr("Tracks (*.gpx);;All files (*)"));
        if (!path.isEmpty()) {
            read(path.toStdString());
        }
    }

    void read(const std::filesystem::path& path) {
        startJob<TrackBroughtIn>(
            tr("Reading the track"),
            [water = context_.open.water(), path,
             rods = rods_->value() > 0 ? std::optional(rods_->value()) : std::nullopt](
                base::Progress& progress) -> base::Result<TrackBroughtIn> {
                auto track = water::bringInTrack(*water, path, progress);
                if (!track) {
                    return std::unexpected(track.error());
                }
                auto stays = water::bringInTrackStays(*water, path, rods, progress);
                if (!stays) {
                    return std::unexpected(stays.error());
                }
                return TrackBroughtIn{std::move(*track), std::move(*stays)};
            },
            [this](base::Result<TrackBroughtIn> read) {
                if (!read) {
                    tell(read.error());
                    return;
                }
                context_.chart.setDayTrack(
                    std::make_shared<const rates::Track>(std::move(read->track)));
                if (read->found.known > 0) {
                    emit context_.open.happened(
                        tr("%1 of the track stand in the log already.")
                            .arg(wording::staysCounted(static_cast<qint64>(read->found.known))));
                }
                tellDoubtful(read->found.doubtful);
                offer(std::move(read->found.stays));
            });
    }

    void tellDoubtful(const std::vector<water::LogBroughtIn::Doubtful>& doubtful) {
        for (const water::LogBroughtIn::Doubtful& one : doubtful) {
            emit context_.open.happened(wording::saidOfDoubtful(one.stay, one.meets, water()));
        }
    }

    /// Where the boat was moved within a stay, or lay longer, only the angler knows.
    void layTimes() {
        const auto timeOf = [this](const QString& text) {
            const logbook::Stay* stay = chosen();
            return stay == nullptr
                       ? std::nullopt
                       : units::momentWritten(text.toStdString(), stay->start, water().clock);
        };
        const QString hint = tr("a time such as 10:20");
        from_ = addAmount({tr("From"),
                           tr("When the chosen stay began"),
                           [this, timeOf](const QString& text) {
                               const auto time = timeOf(text);
                               return time && *time < chosen()->end;
                           },
                           {},
                           hint},
                          [this, timeOf](const QString& text) {
                              found_[chosenAt()].start = *timeOf(text);
                              showList();
                          });
        to_ = addAmount({tr("To"),
                         tr("When it ended"),
                         [this, timeOf](const QString& text) {
                             const auto time = timeOf(text);
                             return time && *time > chosen()->start;
                         },
                         {},
                         hint},
                        [this, timeOf](const QString& text) {
                            found_[chosenAt()].end = *timeOf(text);
                            showList();
                        });
        cut_ = addAmount({tr("Cut at"), tr("Makes two stays of it: before this time, and after"),
                          [this, timeOf](const QString& text) {
                              const auto time = timeOf(text);
                              return time && *time > chosen()->start && *time < chosen()->end;
                          },
                          tr("one stay"), tr("a time within the stay, such as 10:20")},
                         [this, timeOf](const QString& text) {
                             if (!text.isEmpty()) {
                                 cutChosen(*timeOf(text));
                             }
                         });
    }

    [[nodiscard]] std::size_t chosenAt() const {
        return static_cast<std::size_t>(list_->currentRow());
    }
    [[nodiscard]] const logbook::Stay* chosen() const {
        const int row = list_->currentRow();
        return row >= 0 && static_cast<std::size_t>(row) < found_.size() ? &found_[chosenAt()]
                                                                         : nullptr;
    }

    void cutChosen(units::Moment at) {
        const std::size_t row = chosenAt();
        logbook::Stay after = found_[row];
        after.start = at;
        found_[row].end = at;
        const auto next = static_cast<std::ptrdiff_t>(row) + 1;
        found_.insert(found_.begin() + next, std::move(after));
        ticked_.insert(ticked_.begin() + next, ticked_[row]);
        showList();
    }

    void offer(logbook::Log stays) {
        found_ = std::move(stays);
        ticked_.assign(found_.size(), true);
        showList();
        emit lineChanged();
    }

    /// What is found, with the ticks as they were; on the chart as well.
    void showList() {
        const QSignalBlocker quiet(list_);
        const int row = list_->currentRow();
        list_->clear();
        for (std::size_t i = 0; i < found_.size(); ++i) {
            auto* item = new QListWidgetItem(wording::stayTitle(found_[i], water().clock), list_);
            item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
            item->setCheckState(ticked_[i] ? Qt::Checked : Qt::Unchecked);
        }
        list_->setCurrentRow(std::min(std::max(row, 0), list_->count() - 1));
        showOnChart();
        showChosen();
    }

    void takeTick(const QListWidgetItem* item) {
        ticked_[static_cast<std::size_t>(list_->row(item))] = item->checkState() == Qt::Checked;
        showOnChart();
    }

    [[nodiscard]] logbook::Log ticked() const {
        logbook::Log ticked;
        for (std::size_t i = 0; i < found_.size(); ++i) {
            if (ticked_[i]) {
                ticked.push_back(found_[i]);
            }
        }
        return ticked;
    }

    void showOnChart() {
        logbook::Log shown = ticked();
        context_.chart.setOfferedStays(
            shown.empty() ? nullptr
                          : std::make_shared<const std::vector<logbook::Stay>>(std::move(shown)));
    }

    void showChosen() {
        const logbook::Stay* stay = chosen();
        for (widgets::AmountField* field : {from_, to_, cut_}) {
            setFieldShown(field->parentWidget(), stay != nullptr);
        }
        if (stay == nullptr) {
            return;
        }
        const auto timeOf = [this](units::Moment moment) {
            return QString::fromStdString(units::timeOfDayText(moment, water().clock));
        };
        from_->showAmount(timeOf(stay->start));
        to_->showAmount(timeOf(stay->end));
        cut_->showAmount({});
        if (water().frame) {
            context_.chart.lookAt(water().frame->toWater(stay->place));
        }
    }

    void addTicked() {
        edits::addStays(context_.open, tr("Add stays of the track"), ticked());
        offer({});
    }

    logbook::Log found_;
    std::vector<bool> ticked_; ///< One for each that was found.
    QSpinBox* rods_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* add_ = nullptr;
    widgets::AmountField* from_ = nullptr;
    widgets::AmountField* to_ = nullptr;
    widgets::AmountField* cut_ = nullptr;
};

} // namespace

TrackTaker* makeTrackStep(DayContext context) {
    return new TrackStep(context);
}

} // namespace days::looking_back
