// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/step_panel.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/change_facts.h"
#include "app/edits/set_plan.h"
#include "app/widgets/wind_dial.h"
#include "app/wording/cautions.h"
#include "app/wording/tongue.h"
#include "app/wording/typed_amount.h"
#include "core/marks/overnight.h"
#include "core/units/written_time.h"
#include "core/water/steps/day_cautions.h"
#include "core/wind/beaufort.h"

#include <QDateEdit>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>

namespace days::tomorrow {

namespace {

using widgets::AmountField;

constexpr int strongestChosen = 9; // what is more is typed; nobody anchors in it

QDate toDate(units::Day day) {
    return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
            static_cast<int>(static_cast<unsigned>(day.day()))};
}

units::Day fromDate(QDate date) {
    return {std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
            std::chrono::day(static_cast<unsigned>(date.day()))};
}

bool isTime(const QString& text) {
    return units::timeWritten(text.toStdString()).has_value();
}

/// Nothing for a text that is no stay, or none that the day can be laid out for.
std::optional<std::chrono::seconds> stayOf(const QString& text) {
    const auto span = units::spanWritten(text.toStdString());
    const bool isInRange =
        span && *span >= std::chrono::minutes(5) && *span <= std::chrono::hours(12);
    return isInRange ? span : std::nullopt;
}

class ConditionsStep : public DayStep {
public:
    explicit ConditionsStep(DayContext context) : DayStep(context) {
        addDay();
        addClock();
        addStay();
        addWind();
        addLaterWind();
        addWater();
    }

    DayStepLine refresh() override {
        const marks::ExpectedDay& day = water().plan.day;
        const QSignalBlocker quiet(day_);
        day_->setDate(toDate(day.day));
        start_->showAmount(timeOfDay(day.start));
        end_->showAmount(timeOfDay(day.end));
        clock_->showAmount(QString::fromStdString(water().clock.zone()));
        setWords(clockWarning_, clockQuestion(water()));
        stay_->showAmount(
            day.stay ? wording::Words::hours(
                           std::chrono::duration<double, std::ratio<3600>>(*day.stay).count())
                     : QString());
        showWind(day.wind);
        showLaterWind(day.windLater);
        level_->showAmount(words().levelChange(day.levelChange));
        temperature_->showAmount(day.waterTemperature ? words().temperature(*day.waterTemperature)
                                                      : QString());
        const auto strong = water::windCaution(day);
        setWords(windWarning_, strong ? wording::said(*strong, words()) : QString());
        const auto cold =
            day.waterTemperature ? water::coldCaution(day.waterTemperature) : std::nullopt;
        setWords(coldWarning_, cold ? wording::said(*cold, words()) : QString());
        return {conditionsLine(day, words()), false};
    }

private:
    void set(const QString& name, const std::function<void(marks::ExpectedDay&)>& change) {
        edits::setPlan(context_.open, name, [&](marks::Plan& plan) { change(plan.day); });
        refresh();
    }

    void showWind(const logbook::Wind& wind) {
        if (wind.from) {
            dial_->setFrom(wind.from->inDegrees());
        } else {
            dial_->setUnknown();
        }
        from_->setPlaceholderText(wind.speed ? tr("variable") : notSaid());
        from_->showAmount(wind.from ? wording::Words::bearing(*wind.from) : QString());
        speed_->showAmount(wind.speed ? words().speed(*wind.speed) : QString());
        setWords(beaufort_, wind.speed ? beaufortWords(*wind.speed) : QString());
        clearWind_->setEnabled(wind != logbook::Wind() || water().plan.day.windLater.has_value());
    }

    void showLaterWind(const std::optional<marks::LaterWind>& later) {
        const logbook::Wind wind = later ? later->wind : logbook::Wind();
        turns_->showAmount(later ? timeOfDay(later->at) : QString());
        laterFrom_->setPlaceholderText(wind.speed ? tr("variable") : notSaid());
        laterFrom_->showAmount(wind.from ? wording::Words::bearing(*wind.from) : QString());
        laterSpeed_->showAmount(wind.speed ? words().speed(*wind.speed) : QString());
        laterFrom_->setEnabled(later.has_value());
        laterSpeed_->setEnabled(later.has_value());
    }

    [[nodiscard]] static QString notSaid() { return tr("not said"); }

    void addDay() {
        day_ = new QDateEdit(this);
        day_->setCalendarPopup(true);
        day_->setDisplayFormat(wording::Tongue::tr("ddd d MMM yyyy"));
        addField(tr("Day"), day_, tr("The day you will be on the water"));
        connect(day_, &QDateEdit::dateChanged, this, [this](QDate date) {
            set(tr("Set day"), [&](marks::ExpectedDay& day) { day.day = fromDate(date); });
        });
        const QString hint = tr("a time such as 7:40, 0740 or 5pm");
        start_ = addAmount({tr("From"), tr("When the boat leaves"), isTime, {}, hint},
                           [this](const QString& text) {
                               const auto time = units::timeWritten(text.toStdString());
                               set(tr("Set start"), [&](marks::ExpectedDay& day) {
                                   day.start = *time;
                                   day = marks::overnight(day);
                               });
                           });
        end_ = addAmount({tr("To"),
                          tr("When the boat is back; before the start: the next morning"),
                          isTime,
                          {},
                          hint},
                         [this](const QString& text) {
                             const auto time = units::timeWritten(text.toStdString());
                             set(tr("Set end"), [&](marks::ExpectedDay& day) {
                                 day.end = *time;
                                 day = marks::overnight(day);
                             });
                         });
    }

    void addClock() {
        clock_ =
            addAmount({tr("Clock"),
                       tr("The time zone of this water: all its times are told by it"),
                       [](const QString& text) {
                           return units::Clock::inZone(text.trimmed().toStdString()).has_value();
                       },
                       {},
                       tr("a time zone such as Europe/London")},
                      [this](const QString& text) {
                          const auto clock = units::Clock::inZone(text.trimmed().toStdString());
                          edits::changeFacts(context_.open, tr("Set clock"),
                                             [&](water::Water& water) { water.clock = *clock; });
                          refresh();
                      });
        clockWarning_ = addWarning();
    }

    void addStay() {
        stay_ = addAmount({tr("On each mark"),
                           tr("How long to fish each mark; ten minutes at the ropes come on top"),
                           [](const QString& text) { return stayOf(text).has_value(); },
                           tr("the day shared out"),
                           tr("a time from 5 min to 12 h, such as 1 h 30 or 90 min")},
                          [this](const QString& text) {
                              set(tr("Set time on each mark"),
                                  [&](marks::ExpectedDay& day) { day.stay = stayOf(text); });
                          });
    }

    void addWind() {
        dial_ = new widgets::WindDial(this);
        addField(tr("Wind"), dial_,
                 tr("Drag the arrow to where the wind comes from (arrow keys turn it)"));
        connect(dial_, &widgets::WindDial::turning, this, [this](double degrees) {
            from_->showAmount(wording::Words::bearing(units::Bearing::degrees(degrees)));
        });
        connect(dial_, &widgets::WindDial::turned, this,
                [this](double degrees) { setFrom(units::Bearing::degrees(degrees)); });
        from_ = addAmount(
            {tr("Wind from"), tr("Degrees true; empty where it is variable or nobody knows"),
             [](const QString& text) { return wording::bearingTyped(text).has_value(); }, notSaid(),
             tr("degrees from 0 to 360, or a point such as SW; empty: not known")},
            [this](const QString& text) { setFrom(wording::bearingTyped(text)); });
        // What only the forecast knows: day and hours mostly stand as they should.
        setProperty(keysGoTo, QVariant::fromValue<QWidget*>(from_));
        speed_ =
            addAmount({tr("Wind speed"),
                       tr("Mean speed: 6 m/s, 13 mph, 12 kn, F4; 0 is a calm, empty is not "
                          "known"),
                       [this](const QString& text) { return speedOf(text).has_value(); }, notSaid(),
                       tr("a speed from 0 to 40 m/s, such as 13 mph, 12 kn or F4; empty: not "
                          "known")},
                      [this](const QString& text) {
                          set(tr("Set wind speed"),
                              [&](marks::ExpectedDay& day) { day.wind.speed = speedOf(text); });
                      });
        clearWind_ = makeButton(tr("Wind not known"), QStringLiteral("Ctrl+Shift+W"),
                                tr("Clear direction and speed of the wind"), [this] {
                                    set(tr("Clear wind"), [](marks::ExpectedDay& day) {
                                        day.wind = {};
                                        day.windLater.reset();
                                    });
                                });
        addRow({makeByForce(), clearWind_});
        beaufort_ = addWords();
        windWarning_ = addWarning();
    }

    /// The speed by Beaufort's force, for a hand that is at the mouse.
    QPushButton* makeByForce() {
        QPushButton* button =
            makeButton(tr("By force..."), {}, tr("Choose the wind's force"), [] {});
        auto* forces = new QMenu(button);
        for (int force = 0; force <= strongestChosen; ++force) {
            const std::string name(wind::beaufortName(force));
            forces->addAction(tr("F%1, %2").arg(force).arg(wording::Tongue::ofCore(name)), this,
                              [this, force] {
                                  set(tr("Set wind speed"), [&](marks::ExpectedDay& day) {
                                      day.wind.speed = wind::middleOfForce(force);
                                  });
                              });
        }
        button->setMenu(forces);
        return button;
    }

    void addLaterWind() {
        turns_ = addAmount(
            {tr("Wind turns at"), tr("When the wind turns or gets up; empty: one wind all day"),
             isTime, tr("one wind all day"), tr("a time such as 13:00 or 1pm, or empty")},
            [this](const QString& text) {
                const auto at = units::timeWritten(text.toStdString());
                set(tr("Set turn of the wind"), [&](marks::ExpectedDay& day) {
                    const logbook::Wind wind =
                        day.windLater ? day.windLater->wind : logbook::Wind();
                    day.windLater = at ? std::optional(marks::LaterWind{*at, wind}) : std::nullopt;
                    day = marks::overnight(day);
                });
            });
        laterFrom_ = addAmount(
            {tr("Then from"), tr("Where it comes from then, degrees true; empty: variable"),
             [](const QString& text) { return wording::bearingTyped(text).has_value(); }, notSaid(),
             tr("degrees from 0 to 360, or a point such as SW; empty: not known")},
            [this](const QString& text) {
                setLater([&](logbook::Wind& wind) { wind.from = wording::bearingTyped(text); });
            });
        laterSpeed_ =
            addAmount({tr("Then speed"), tr("How strong it is then; empty: not known"),
                       [this](const QString& text) { return speedOf(text).has_value(); }, notSaid(),
                       tr("a speed from 0 to 40 m/s, such as 13 mph, 12 kn or F4; empty: not "
                          "known")},
                      [this](const QString& text) {
                          setLater([&](logbook::Wind& wind) { wind.speed = speedOf(text); });
                      });
    }

    void setLater(const std::function<void(logbook::Wind&)>& change) {
        set(tr("Set later wind"), [&](marks::ExpectedDay& day) {
            if (day.windLater) {
                change(day.windLater->wind);
            }
        });
    }

    void addWater() {
        level_ = addAmount({tr("Level"),
                            tr("Water level above (+) or below (-) that of the chart"),
                            [this](const QString& text) {
                                return wording::lengthTyped(text, words().units()).has_value();
                            },
                            {},
                            tr("a length such as +0.35 m or -1ft")},
                           [this](const QString& text) {
                               set(tr("Set level"), [&](marks::ExpectedDay& day) {
                                   day.levelChange = *wording::lengthTyped(text, words().units());
                               });
                           });
        temperature_ =
            addAmount({tr("Water"), tr("Water temperature"),
                       [this](const QString& text) {
                           return wording::waterTemperatureTyped(text, words().units()).has_value();
                       },
                       tr("not known"), tr("a temperature such as 8 °C or 46 F, up to 40 °C")},
                      [this](const QString& text) {
                          set(tr("Set water temperature"), [&](marks::ExpectedDay& day) {
                              day.waterTemperature =
                                  wording::waterTemperatureTyped(text, words().units());
                          });
                      });
        coldWarning_ = addWarning();
    }

    [[nodiscard]] std::optional<units::Speed> speedOf(const QString& text) const {
        const auto speed = wording::speedTyped(text, words().units());
        const bool isInRange =
            speed && speed->inMetresPerSecond() >= 0.0 && speed->inMetresPerSecond() <= 40.0;
        return isInRange ? speed : std::nullopt;
    }

    void setFrom(std::optional<units::Bearing> from) {
        set(tr("Set wind"), [&](marks::ExpectedDay& day) { day.wind.from = from; });
    }

    QDateEdit* day_ = nullptr;
    AmountField* start_ = nullptr;
    AmountField* end_ = nullptr;
    AmountField* stay_ = nullptr;
    AmountField* clock_ = nullptr;
    QLabel* clockWarning_ = nullptr;
    widgets::WindDial* dial_ = nullptr;
    AmountField* from_ = nullptr;
    AmountField* speed_ = nullptr;
    QPushButton* clearWind_ = nullptr;
    AmountField* turns_ = nullptr;
    AmountField* laterFrom_ = nullptr;
    AmountField* laterSpeed_ = nullptr;
    AmountField* level_ = nullptr;
    AmountField* temperature_ = nullptr;
    QLabel* beaufort_ = nullptr;
    QLabel* windWarning_ = nullptr;
    QLabel* coldWarning_ = nullptr;
};

} // namespace

DayStep* makeConditionsStep(DayContext context) {
    return new ConditionsStep(context);
}

} // namespace days::tomorrow
