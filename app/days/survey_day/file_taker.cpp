// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/file_taker.h"

#include "app/days/chart_link.h"
#include "app/days/survey_day/column_dialog.h"
#include "app/days/what_to_open.h"
#include "app/edits/add_lead_line.h"
#include "app/edits/add_stays.h"
#include "app/edits/add_survey_day.h"
#include "app/edits/add_weed_notes.h"
#include "app/edits/change_water.h"
#include "app/edits/set_house_rules.h"
#include "app/edits/set_shoreline.h"
#include "app/wording/log_words.h"
#include "app/wording/refused_words.h"
#include "app/wording/tongue.h"
#include "core/water/steps/bring_in_log.h"
#include "core/water/steps/check_plausible.h"
#include "core/water/steps/part_days.h"

#include <QDirIterator>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

#include <algorithm>
#include <utility>

namespace days::survey_day {

using base::Result;
using water::FileContent;

namespace {

/// Facts before the soundings that need them, the shore before the soundings that lie in it.
int turnOf(FileContent content) {
    switch (content) {
    case FileContent::waterFile:
        return 0;
    case FileContent::waterFacts:
    case FileContent::surveyDayFacts:
        return 1;
    case FileContent::shoreline:
        return 2;
    case FileContent::soundings:
        return 3;
    default:
        return 4;
    }
}

/// Folders give all files in them, by name.
QStringList filesOf(const QStringList& paths) {
    QStringList files;
    for (const QString& path : paths) {
        if (!QFileInfo(path).isDir()) {
            files += path;
            continue;
        }
        QStringList inside;
        QDirIterator walk(path, QDir::Files | QDir::Readable, QDirIterator::Subdirectories);
        while (walk.hasNext()) {
            inside += walk.next();
        }
        inside.sort();
        files += inside;
    }
    return files;
}

QString fileName(const QString& path) {
    return QFileInfo(path).fileName();
}

} // namespace

FileTaker::FileTaker(DayContext context, QWidget* window) : context_(context), window_(window) {
    using open_water::OpenWater;
    connect(&context_.open, &OpenWater::opened, this, &FileTaker::leaveWater);
    connect(&context_.open, &OpenWater::openingEnded, this, [this] {
        if (std::exchange(isOpening_, false)) {
            done({});
        }
    });
}

void FileTaker::ask(const QString& title) {
    take(askWhatAllToOpen(window_, preferences::FileKind::survey, title));
}

void FileTaker::take(const QStringList& paths) {
    for (const QString& path : filesOf(paths)) {
        const auto content = water::lookAtFile(path.toStdString());
        if (content) {
            waiting_.push_back({path, *content});
        } else {
            emit context_.open.failed(content.error());
        }
    }
    std::stable_sort(waiting_.begin(), waiting_.end(), [](const Waiting& a, const Waiting& b) {
        return turnOf(a.content) < turnOf(b.content);
    });
    takeNext();
}

void FileTaker::takeNext() {
    if (isReading_ || waiting_.empty()) {
        return;
    }
    const Waiting next = waiting_.front();
    waiting_.pop_front();
    isReading_ = true;
    takeFile(next);
}

void FileTaker::takeFile(const Waiting& file) {
    switch (file.content) {
    case FileContent::waterFile:
        takeWater(file.path);
        return;
    case FileContent::soundings:
        takeSoundings(file.path);
        return;
    case FileContent::shoreline:
        takeShoreline(file.path);
        return;
    case FileContent::line:
        // A walked shore where there is none yet, else the track of a fishing day.
        context_.open.water()->shoreline.empty() ? takeShoreline(file.path) : takeTrack(file.path);
        return;
    case FileContent::surveyDayFacts:
        takeDayFacts(file.path);
        return;
    case FileContent::waterFacts:
        takeWaterFacts(file.path);
        return;
    case FileContent::weedNotes:
        takeWeedNotes(file.path);
        return;
    case FileContent::leadLine:
        takeLeadLine(file.path);
        return;
    case FileContent::houseRules:
        takeHouseRules(file.path);
        return;
    case FileContent::log:
        takeLog(file.path);
        return;
    }
}

template <class T>
void FileTaker::read(const QString& path, std::function<Result<T>(base::Progress&)> work,
                     std::function<void(T)> then, std::function<bool(const base::Error&)> mend) {
    context_.open.jobs().start<T>(
        tr("Reading %1").arg(fileName(path)), std::move(work),
        [this, path, water = waters_, then = std::move(then),
         mend = std::move(mend)](Result<T> got) {
            if (water != waters_) {
                done(tr("%1 was left out: another water was opened.").arg(fileName(path)));
            } else if (got) {
                then(std::move(*got));
            } else if (!mend || !mend(got.error())) {
                fail(got.error());
            }
        },
        jobs::JobRunner::Earlier::finished);
}

void FileTaker::takeWater(const QString& path) {
    // What was brought with it belongs into it, and waits until it is open.
    isOpening_ = true;
    emit waterFound(path);
    if (!context_.open.opening().isBusy() && std::exchange(isOpening_, false)) {
        done({});
    }
}

void FileTaker::leaveWater() {
    ++waters_;
    // Facts go by file name; a file of the same name in another water has nothing to do with them.
    facts_.clear();
    if (!isOpening_ && !waiting_.empty()) {
        emit context_.open.happened(
            tr("%L1 files were left out: another water was opened.").arg(waiting_.size()));
        waiting_.clear();
    }
}

void FileTaker::fail(const base::Error& error) {
    if (error.kind != base::ErrorKind::cancelled) {
        emit context_.open.failed(error);
    }
    isReading_ = false;
    takeNext();
}

void FileTaker::done(const QString& sentence) {
    if (!sentence.isEmpty()) {
        emit context_.open.happened(sentence);
    }
    isReading_ = false;
    takeNext();
}

const readers::SurveyDayFacts* FileTaker::factsFor(const QString& path) const {
    const auto found = facts_.find(fileName(path).toStdString());
    return found == facts_.end() ? nullptr : &found->second;
}

void FileTaker::takeSoundings(const QString& path) {
    readers::SoundingFileSettings settings;
    if (const readers::SurveyDayFacts* facts = factsFor(path)) {
        settings.unit = facts->unit;
    }
    const auto preview = water::previewOf(path.toStdString(), settings);
    if (!preview) {
        fail(preview.error());
        return;
    }
    const auto isFound = [&](readers::ColumnRole role) {
        return (*preview)->columnOf(role).has_value();
    };
    const bool isCertain =
        !*preview || (isFound(readers::ColumnRole::x) && isFound(readers::ColumnRole::y) &&
                      isFound(readers::ColumnRole::depth) && (*preview)->isUnitTold);
    if (isCertain) {
        readSoundings(path, settings);
    } else {
        askColumns(path, **preview, settings);
    }
}

void FileTaker::askColumns(const QString& path, const readers::TablePreview& preview,
                           const readers::SoundingFileSettings& settings) {
    // Only the next file waits for the answer; what runs in the background goes on meanwhile.
    auto* dialog = new ColumnDialog(fileName(path), preview, window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::finished, this, [this, dialog, path, settings](int answer) {
        if (answer == QDialog::Accepted) {
            readSoundings(path, dialog->settings(settings));
        } else {
            done(tr("%1 was left out.").arg(fileName(path)));
        }
    });
    dialog->open();
}

void FileTaker::readSoundings(const QString& path, const readers::SoundingFileSettings& settings) {
    read<water::DayBroughtIn>(
        path,
        [water = context_.open.water(), path, settings](base::Progress& progress) {
            return water::bringInDay(*water, path.toStdString(), settings, progress);
        },
        [this, path](const water::DayBroughtIn& brought) { takeDay(path, brought); },
        [this, path, settings](const base::Error& error) {
            return water::areFeet(error) && askWhetherFeet(path, error, settings);
        });
}

bool FileTaker::askWhetherFeet(const QString& path, const base::Error& error,
                               readers::SoundingFileSettings settings) {
    auto* box = new QMessageBox(QMessageBox::Question, tr("Depths in feet?"),
                                wording::Tongue::sentence(error), QMessageBox::NoButton, window_);
    box->setAttribute(Qt::WA_DeleteOnClose);
    const QAbstractButton* feet = box->addButton(tr("They are feet"), QMessageBox::AcceptRole);
    box->addButton(tr("Leave out"), QMessageBox::RejectRole);
    settings.unit = readers::DepthUnit::feet;
    connect(box, &QDialog::finished, this, [this, box, feet, path, settings] {
        if (box->clickedButton() == feet) {
            readSoundings(path, settings);
        } else {
            done(tr("%1 was left out.").arg(fileName(path)));
        }
    });
    box->open();
    return true;
}

void FileTaker::takeDay(const QString& path, const water::DayBroughtIn& brought) {
    std::vector<soundings::SurveyDay> days =
        water::partedByDays(brought.day, context_.open.water()->clock);
    if (const readers::SurveyDayFacts* facts = factsFor(path)) {
        for (soundings::SurveyDay& day : days) {
            const std::string name = days.size() > 1 ? day.name : std::string();
            water::applyFacts(*facts, day);
            day.name = name.empty() ? day.name : name; // Of several days no fact names one.
        }
    }
    if (const auto added = edits::addSurveyDays(context_.open, days); !added) {
        fail(added.error());
        return;
    }
    const QString refused = wording::refusedRows(brought.report);
    done(tr("%L1 soundings from %2%3.%4")
             .arg(brought.day.soundings.size())
             .arg(fileName(path),
                  days.size() > 1 ? tr(", %L1 survey days").arg(days.size()) : QString(),
                  refused.isEmpty() ? QString() : tr(" Left out: %1").arg(refused)));
}

void FileTaker::takeShoreline(const QString& path) {
    read<std::vector<geo::LonLatPiece>>(
        path,
        [water = context_.open.water(), path](base::Progress& progress) {
            return water::bringInShoreline(*water, path.toStdString(), std::nullopt, progress);
        },
        [this, path](std::vector<geo::LonLatPiece> pieces) {
            if (const auto set = edits::setShoreline(context_.open, std::move(pieces)); !set) {
                fail(set.error());
                return;
            }
            done(tr("Shoreline from %1.").arg(fileName(path)));
        });
}

void FileTaker::takeWeedNotes(const QString& path) {
    read<water::WeedNotesBroughtIn>(
        path,
        [water = context_.open.water(), path](base::Progress& progress) {
            return water::bringInWeedNotes(*water, path.toStdString(), progress);
        },
        [this, path](water::WeedNotesBroughtIn brought) {
            const QString said =
                tr("%L1 weed notes from %2.").arg(brought.notes.size()).arg(fileName(path));
            edits::addWeedNotes(context_.open, std::move(brought.notes));
            tellTaken(said, wording::notUsed(brought.report));
        });
}

void FileTaker::takeLeadLine(const QString& path) {
    read<water::LeadLineBroughtIn>(
        path,
        [water = context_.open.water(), path](base::Progress& progress) {
            return water::bringInLeadLine(*water, path.toStdString(), progress);
        },
        [this, path](water::LeadLineBroughtIn brought) {
            const QString said = tr("%L1 soundings by lead line from %2.")
                                     .arg(brought.soundings.size())
                                     .arg(fileName(path));
            edits::addLeadLine(context_.open, std::move(brought.soundings));
            tellTaken(said, wording::notUsed(brought.report));
        });
}

void FileTaker::takeHouseRules(const QString& path) {
    const auto rules = water::bringInHouseRules(path.toStdString());
    if (!rules) {
        fail(rules.error());
        return;
    }
    edits::setHouseRules(context_.open, *rules);
    done(tr("House rules from %1.").arg(fileName(path)));
}

void FileTaker::takeLog(const QString& path) {
    read<water::LogBroughtIn>(
        path,
        [water = context_.open.water(), path](base::Progress& progress) {
            return water::bringInLog(*water, path.toStdString(), progress);
        },
        [this, path](water::LogBroughtIn brought) {
            const QString said = tr("%1: %2").arg(fileName(path), wording::broughtIn(brought));
            const QString lost = wording::leftOutOf(brought, *context_.open.water());
            edits::addStays(context_.open, tr("Bring in log"), std::move(brought.stays));
            tellTaken(said, lost);
        });
}

void FileTaker::tellTaken(const QString& said, const QString& lost) {
    if (lost.isEmpty()) {
        done(said);
    } else {
        fail({base::ErrorKind::unusableInput, (said + ' ' + lost).toStdString(), "",
              "put the file right and bring it in once more"});
    }
}

void FileTaker::takeTrack(const QString& path) {
    read<rates::Track>(
        path,
        [water = context_.open.water(), path](base::Progress& progress) {
            return water::bringInTrack(*water, path.toStdString(), progress);
        },
        [this, path](rates::Track track) {
            context_.chart.setDayTrack(std::make_shared<const rates::Track>(std::move(track)));
            emit dayTrackFound(path);
            done(tr("The day's track from %1; its stays are under Looking back.")
                     .arg(fileName(path)));
        });
}

} // namespace days::survey_day
