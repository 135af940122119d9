// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/steps.h"
#include "app/edits/add_stays.h"
#include "app/wording/doubts.h"
#include "core/water/steps/bring_in_log.h"

#include <QFileDialog>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>

namespace days::looking_back {

namespace {

struct TrackBroughtIn {
    rates::Track track;
    water::LogBroughtIn found;
};

class TrackStep : public DayStep {
public:
    explicit TrackStep(DayContext context) : DayStep(context) {
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
        add_ = makeButton(tr("Add as blanks"), QStringLiteral("Ctrl+Return"),
                          tr("Put the ticked stays into the log; fill in the fish there"),
                          [this] { addTicked(); });
        addRow({add_});
    }

    DayStepLine refresh() override {
        list_->setVisible(!found_.empty());
        add_->setEnabled(!found_.empty());
        return {found_.empty()
                    ? tr("none brought in")
                    : tr("%1 found").arg(counted(found_.size(), tr("stay"), tr("stays"))),
                false};
    }

private:
    void askFile() {
        const QString path = QFileDialog::getOpenFileName(this, tr("Bring in track"), {},
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
                            .arg(counted(read->found.known, tr("stay"), tr("stays"))));
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

    void offer(logbook::Log stays) {
        found_ = std::move(stays);
        list_->clear();
        for (const logbook::Stay& stay : found_) {
            auto* item = new QListWidgetItem(wording::stayTitle(stay, water().clock), list_);
            item->setFlags(item->flags() | Qt::ItemIsUserCheckable);
            item->setCheckState(Qt::Checked);
        }
        emit lineChanged();
    }

    void addTicked() {
        logbook::Log ticked;
        for (int i = 0; i < list_->count(); ++i) {
            if (list_->item(i)->checkState() == Qt::Checked) {
                ticked.push_back(found_[static_cast<std::size_t>(i)]);
            }
        }
        edits::addStays(context_.open, tr("Add stays of the track"), std::move(ticked));
        offer({});
    }

    logbook::Log found_;
    QSpinBox* rods_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* add_ = nullptr;
};

} // namespace

DayStep* makeTrackStep(DayContext context) {
    return new TrackStep(context);
}

} // namespace days::looking_back
