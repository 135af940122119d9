// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/stay_entry_part.h"

#include "app/days/chart_link.h"
#include "app/edits/add_stays.h"
#include "app/open_water/now.h"
#include "app/widgets/entry_form.h"
#include "app/wording/doubts.h"
#include "app/wording/tongue.h"
#include "core/units/written_time.h"
#include "core/water/questions/stay_doubts.h"
#include "core/water/steps/known_stays.h"

#include <QLayout>
#include <QPushButton>

namespace days::looking_back {

namespace {

QString pointPrompt() {
    return wording::Tongue::tr("Point at where the boat lay, or type its place");
}

} // namespace

StayEntryPart::StayEntryPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    lay();
    addWide(form_);
    hide();
    connect(form_, &widgets::EntryForm::changed, this, &StayEntryPart::showRead);
    connect(form_, &widgets::EntryForm::writeAsked, this, &StayEntryPart::write);
    connect(form_, &widgets::EntryForm::left, this, [this] {
        leave();
        emit left();
    });
}

void StayEntryPart::lay() {
    const QString unknown = tr("not known");
    form_ = new widgets::EntryForm(
        {{tr("Place"),
          tr("The number of a mark of the day, a name, a position; or point at it on the chart"),
          tr("mark, name or position"),
          tr("a mark of the day such as 3, a name of this water, or a position such as 55.1950 N "
             "3.1041 E"),
          true},
         {tr("From"), tr("A time such as 0920, 9:20 or 5pm"), {}, tr("a time such as 0920")},
         {tr("To"),
          tr("A time; before the first one, of the next day"),
          {},
          tr("a time such as 1105, at most a day after the first")},
         {tr("Rods"), tr("Rods in the water. A stay whose rods are not known counts in no rate"),
          unknown, tr("a number from 1 to 8, or nothing where it is not known")},
         {tr("Bait"), tr("What was on the hooks; several with commas"), unknown, {}},
         {tr("Day"),
          tr("A day such as 2026-10-03 or 3/10/26"),
          {},
          tr("a day such as 2026-10-03")}},
        tr("Write down"), this);
    form_->addButton(makeButton(tr("Point…"), {}, tr("Point on the chart at where the boat lay"),
                                [this] { askPlace(); }));
}

DayStepLine StayEntryPart::refresh() {
    if (form_->isUnderWay()) {
        places_ = knownPlaces(water(), context_.open.planned().get(), words());
        showRead();
    }
    return {};
}

bool StayEntryPart::isUnderWay() const {
    return form_->isUnderWay();
}

void StayEntryPart::begin(units::Day day) {
    places_ = knownPlaces(water(), context_.open.planned().get(), words());
    pointed_.reset();
    show();
    form_->begin(tr("A stay"));
    form_->line(placeLine).complete(namesOf(places_));
    form_->line(baitLine).complete(baitsByUse(water().log));
    form_->line(dayLine).setText(QString::fromStdString(units::isoText(day)));
    offer(offeredOn(water(), day));
    offeredFor_ = day;
    askPlace();
    showRead();
    bringIntoView(form_);
}

void StayEntryPart::beginPlanned(const KnownPlace& mark, const logbook::Stay& planned,
                                 const StayOffered& offered) {
    const units::Day day = water().clock.dayOf(planned.start);
    begin(day);
    stopAskingPlace();
    pointed_ = mark;
    form_->line(placeLine).setText(mark.name);
    const auto timeOf = [this](units::Moment moment) {
        return QString::fromStdString(units::timeOfDayText(moment, water().clock));
    };
    offer(offered);
    form_->line(fromLine).offer(timeOf(planned.start));
    form_->line(toLine).offer(timeOf(planned.end));
    form_->line(fromLine).setFocus(Qt::ShortcutFocusReason);
}

void StayEntryPart::offer(const StayOffered& offered) {
    form_->line(fromLine).offer(offered.from);
    form_->line(rodsLine).offer(offered.rods);
    form_->line(baitLine).offer(offered.bait);
}

void StayEntryPart::askPlace() {
    if (!water().frame) {
        return;
    }
    context_.chart.ask<chart::PointMade>(
        pointPrompt(), chart::ToolKind::note,
        [this](const chart::PointMade& made) { takePoint(made.at); });
    // The keys go on belonging to the line: pointing needs none but Escape, which it hears as well.
    form_->line(placeLine).setFocus(Qt::OtherFocusReason);
}

void StayEntryPart::takePoint(geo::WaterPoint at) {
    const geo::LonLat place = water().frame->toEarth(at);
    pointed_ = KnownPlace{wording::Words::place(place), place, {}};
    form_->line(placeLine).setText(pointed_->name);
    form_->line(fromLine).setFocus(Qt::OtherFocusReason);
}

void StayEntryPart::stopAskingPlace() {
    if (context_.chart.isAsking() && context_.chart.prompt() == pointPrompt()) {
        context_.chart.stopAsking();
    }
}

StayRead StayEntryPart::read() const {
    StayTyped typed;
    for (int i = 0; i < stayLineCount; ++i) {
        typed.lines[static_cast<std::size_t>(i)] = form_->text(i);
    }
    typed.pointed = pointed_;
    return readStay(typed, water(), places_);
}

void StayEntryPart::showRead() {
    if (!form_->isUnderWay()) {
        return;
    }
    const auto day = units::dayWritten(form_->text(dayLine).toStdString());
    if (day && *day != offeredFor_) {
        offeredFor_ = *day;
        offer(offeredOn(water(), *day));
    }
    const StayRead typed = read();
    for (int i = 0; i < stayLineCount; ++i) {
        form_->line(i).setRight(typed.isRight[static_cast<std::size_t>(i)]);
    }
    QStringList doubts;
    if (typed.stay) {
        for (const water::StayDoubt& doubt :
             water::doubtsAbout(*typed.stay, water(), context_.open.derived(), open_water::now())) {
            doubts += wording::said(doubt, water().clock, words());
        }
    }
    form_->say(typed.stay
                   ? typed.said
                   : tr("Return goes on, = takes what stands there pale, Escape leaves it."));
    form_->warn(doubts.join('\n'));
}

void StayEntryPart::write() {
    const auto stay = read().stay;
    if (!stay) {
        return;
    }
    using Is = water::StayStanding::Is;
    const water::StayStanding standing = water::KnownStays(water()).standingOf(*stay);
    if (standing.is == Is::doubtful) {
        form_->warn(
            wording::saidOfDoubtful(*stay, standing.of.value_or(logbook::StayId()), water()));
        form_->line(fromLine).setFocus(Qt::OtherFocusReason);
        return;
    }
    const logbook::StayId fresh = edits::addStays(context_.open, tr("Add stay"), {*stay});
    if (standing.is == Is::known) {
        emit context_.open.happened(tr("This stay stands in the log already."));
    } else if (!fresh.isGiven()) {
        return; // Why not has been told.
    } else if (standing.is == Is::update) {
        emit context_.open.happened(tr("The log had this stay: it is told more of now."));
    }
    leave();
    emit written(standing.is == Is::fresh ? fresh : standing.of.value_or(fresh));
}

void StayEntryPart::leave() {
    stopAskingPlace();
    form_->end();
    hide();
}

} // namespace days::looking_back
