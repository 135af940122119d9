// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_context.h"
#include "core/water/steps/bring_in.h"
#include "core/water/steps/look_at_file.h"

#include <QObject>
#include <QStringList>

#include <deque>
#include <map>

class QWidget;

namespace days::survey_day {

/// Brings files into the open water, whatever they are about: what was dropped on the window or
/// chosen in a dialog, one after the other, facts before the soundings that need them. Reading
/// happens in the background; a text of which columns or unit are not certain is shown first.
class FileTaker : public QObject {
    Q_OBJECT
public:
    FileTaker(DayContext context, QWidget* window);

    void take(const QStringList& paths);
    /// Asks for files to take.
    void ask(const QString& title);
    [[nodiscard]] bool isBusy() const { return isReading_ || !waiting_.empty(); }

signals:
    /// One of the files is a water of its own.
    void waterFound(const QString& path);
    /// The track of a fishing day has come onto the chart.
    void dayTrackFound(const QString& path);

private:
    struct Waiting {
        QString path;
        water::FileContent content;
    };

    void takeNext();
    void takeFile(const Waiting& file);
    void takeWater(const QString& path);
    void leaveWater();
    void takeSoundings(const QString& path);
    void askColumns(const QString& path, const readers::TablePreview& preview,
                    const readers::SoundingFileSettings& settings);
    void readSoundings(const QString& path, const readers::SoundingFileSettings& settings);
    void takeDay(const QString& path, const water::DayBroughtIn& brought);
    void takeShoreline(const QString& path);
    void takeDayFacts(const QString& path);
    void takeWaterFacts(const QString& path);
    void takeWeedNotes(const QString& path);
    void takeLeadLine(const QString& path);
    void takeHouseRules(const QString& path);
    void takeLog(const QString& path);
    void takeTrack(const QString& path);

    /// Reads in the background, then takes what was read and goes on to the next file.
    template <class T>
    void read(const QString& path, std::function<base::Result<T>(base::Progress&)> work,
              std::function<void(T)> then, std::function<bool(const base::Error&)> mend = nullptr);
    void fail(const base::Error& error);
    void done(const QString& sentence);
    /// What came in, and as a warning what of the file did not.
    void tellTaken(const QString& said, const QString& lost);
    [[nodiscard]] const readers::SurveyDayFacts* factsFor(const QString& path) const;
    /// Offers to read the file once more, in feet. \return true: the answer goes on from here.
    bool askWhetherFeet(const QString& path, const base::Error& error,
                        readers::SoundingFileSettings settings);
    [[nodiscard]] base::Result<water::Water> withFacts(const water::Water& water) const;
    /// Sentences on agreements that fell away with the levels they were made on.
    [[nodiscard]] QString whatWasDropped(const std::vector<soundings::SurveyDay>& before) const;

    DayContext context_;
    QWidget* window_;
    std::deque<Waiting> waiting_;
    std::map<std::string, readers::SurveyDayFacts> facts_; ///< By file name.
    bool isReading_ = false;
    bool isOpening_ = false; ///< One of the files, a water, is being opened.
    int waters_ = 0;         ///< Counts them: what was read for one is never put into another.
};

} // namespace days::survey_day
