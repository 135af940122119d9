// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/give_away.h"
#include "app/days/looking_back/hours_view.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/season_box.h"
#include "app/days/looking_back/steps.h"
#include "app/days/theme_inks.h"
#include "app/paper/hours_picture.h"
#include "app/wording/counted_words.h"
#include "app/wording/one_line.h"
#include "app/wording/tongue.h"

#include <QLabel>
#include <QPainter>
#include <QPushButton>

namespace days::looking_back {

namespace {

constexpr int curveHeight = 270;
constexpr QSize pictureSize{1280, 900};

/// The curve as it is printed, at the size of the panel.
class HoursCurve : public QWidget {
public:
    HoursCurve(const preferences::Preferences& preferences, QWidget* parent)
        : QWidget(parent), preferences_(preferences) {
        setFixedHeight(curveHeight);
    }
    void setShown(paper::HoursShown shown) {
        shown_ = std::move(shown);
        update();
    }
    [[nodiscard]] const paper::HoursShown& shown() const { return shown_; }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        paper::paintHours(painter, QRectF(rect()), shown_, inksOf(preferences_.theme()));
    }

private:
    const preferences::Preferences& preferences_;
    paper::HoursShown shown_;
};

struct HoursCounted {
    rates::HourRates hours;
    std::optional<water::FishedLight> light;
};

class HoursStep : public DayStep {
public:
    HoursStep(DayContext context, LogQuestion& question, const std::function<void()>& showBeliefs)
        : DayStep(context), question_(question) {
        season_ = new SeasonBox(question_, this);
        addField(tr("Season"), season_, tr("The part of the year that counts, of every year"));
        text_ = addWords();
        view_ = new HoursCurve(context_.preferences, this);
        view_->setAccessibleName(tr("Rate over the day"));
        addWide(view_);
        light_ = addWords();
        copy_ = makeButton(tr("Copy picture"), {}, tr("The curve as a picture, to be pasted"),
                           [this] { copyPicture(); });
        save_ = makeButton(tr("Save table…"), {}, tr("The curve as a CSV table"), [this] {
            saveTableOf(*this, context_.open, QStringLiteral("hours.csv"), hoursTable(hours_));
        });
        addRow({copy_, save_});
        addRow({makeButton(tr("What the log says of each belief"), {},
                           tr("Opens it under Tomorrow, beside your weights"), showBeliefs)});
        showCurve(false);
        connect(&question_, &LogQuestion::changed, this, [this] {
            asked_.reset();
            emit lineChanged();
        });
    }

    DayStepLine refresh() override {
        if (asked_ != context_.open.water()) {
            asked_ = context_.open.water();
            if (asked_->log.empty()) {
                showCurve(false);
                setWords(text_, tr("Nothing logged yet."));
                best_ = tr("nothing logged yet");
            } else {
                ask();
            }
        }
        return {best_, false};
    }

private:
    void ask() {
        startJob<HoursCounted>(
            tr("Counting the hours"),
            [water = asked_, question = question_.question()](
                base::Progress& progress) -> base::Result<HoursCounted> {
                auto hours = water::reviewHours(*water, question, progress);
                if (!hours) {
                    return std::unexpected(hours.error());
                }
                return HoursCounted{std::move(*hours), water::fishedLight(*water, question)};
            },
            [this](base::Result<HoursCounted> counted) {
                if (counted) {
                    draw(std::move(*counted));
                } else {
                    setWords(text_, wording::Tongue::sentence(counted.error()));
                }
                emit lineChanged();
            });
    }

    void showCurve(bool isShown) {
        for (QWidget* each : std::initializer_list<QWidget*>{view_, copy_, save_}) {
            each->setVisible(isShown);
        }
        if (!isShown) {
            setWords(light_, {});
        }
    }

    void draw(HoursCounted made) {
        hours_ = std::move(made.hours);
        const QString trips = wording::tripsCounted(hours_.trips);
        const QString name = wording::oneLine(water().name);
        view_->setShown({hours_, made.light, tr("%1: fish by the hour, %2").arg(name, trips)});
        showCurve(true);
        setWords(text_, tr("Fish per 10 rod-hours by the hour of the day, with the band in which "
                           "the rate may lie; from %1. Hours that were not fished are left out.")
                            .arg(trips));
        setWords(light_, made.light ? lightWords(*made.light) : QString());
        best_ = bestHoursWords(hours_);
    }

    void copyPicture() {
        copyToClipboard(paper::renderHours(view_->shown(), pictureSize));
        emit context_.open.happened(tr("The picture can be pasted now."));
    }

    LogQuestion& question_;
    std::shared_ptr<const water::Water> asked_;
    rates::HourRates hours_;
    QString best_;
    SeasonBox* season_ = nullptr;
    QLabel* text_ = nullptr;
    QLabel* light_ = nullptr;
    HoursCurve* view_ = nullptr;
    QPushButton* copy_ = nullptr;
    QPushButton* save_ = nullptr;
};

} // namespace

DayStep* makeHoursStep(DayContext context, LogQuestion& question,
                       const std::function<void()>& showBeliefs) {
    return new HoursStep(context, question, showBeliefs);
}

} // namespace days::looking_back
