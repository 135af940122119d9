// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/write_up_part.h"

#include "app/days/chart_link.h"
#include "app/edits/add_stays.h"
#include "app/open_water/now.h"
#include "app/widgets/entry_line.h"
#include "app/widgets/plain_table.h"
#include "app/wording/doubts.h"
#include "app/wording/sheet_stops.h"
#include "app/wording/tongue.h"
#include "core/water/questions/stay_doubts.h"
#include "core/water/steps/known_stays.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLayout>
#include <QPushButton>

#include <algorithm>
#include <memory>
#include <ranges>

namespace days::looking_back {

namespace {

constexpr int rowsShown = 10;
constexpr int mostRods = 8;

/// The last day that is not to come, of those for which a sheet was made or which is planned;
/// nothing for the plan.
std::optional<units::Day> dayToWriteUp(const water::Water& water, units::Day today) {
    std::optional<units::Day> day;
    for (const water::BoatSheet& sheet : water.sheets) {
        if (sheet.day <= today) {
            day = sheet.day;
        }
    }
    const units::Day planned = water.plan.day.day;
    return day && planned <= today && planned > *day ? std::nullopt : day;
}

/// Whether the marks of the plan are those of the sheet: another plan has other marks under the
/// same numbers.
bool areItsMarks(const water::BoatSheet& sheet, const water::PlannedDay& planned) {
    return std::ranges::all_of(sheet.stops, [&](const water::BoatSheet::Stop& stop) {
        const auto mark = std::ranges::find(planned.marks, stop.rank, &marks::Mark::rank);
        return mark != planned.marks.end() && mark->lonLat == stop.place;
    });
}

bool areRods(const QString& text) {
    bool isNumber = false;
    const int rods = text.toInt(&isNumber);
    return text.isEmpty() || (isNumber && rods >= 1 && rods <= mostRods);
}

} // namespace

WriteUpPart::WriteUpPart(DayContext context) : DayStep(context) {
    layout()->setContentsMargins(0, 0, 0, 0);
    which_ = new QComboBox(this);
    addField(tr("Day"), which_, tr("The sheet that was in the boat, or the plan as it is now"));
    connect(which_, &QComboBox::activated, this, &WriteUpPart::takeDay);
    about_ = addWords();
    toCome_ = addWarning();
    layDayLines();
    table_ =
        new widgets::PlainTable({tr("Mark"), tr("from – to"), tr("came of it")}, rowsShown, this);
    table_->setAccessibleName(tr("Stops of the day"));
    addWide(table_);
    wrong_ = addWarning();
    setWords(addWords(),
             tr("Space: lay there as planned, a blank until a fish is added. Return: at "
                "other times. Ctrl+F: a fish. Delete: not fished. Escape: done."));
    addRow({makeButton(tr("Done"), {}, tr("Back to all stays; Escape"), [this] { done(); })});
    table_->installEventFilter(this); // Escape is done, and not "choose none"
    connect(table_, &widgets::PlainTable::rowChosen, this, [this] {
        showMark();
        emit chosen();
    });
    connect(table_, &widgets::PlainTable::tickAsked, this,
            [this](int row) { tick(static_cast<std::size_t>(row)); });
    connect(table_, &widgets::PlainTable::openAsked, this,
            [this](int row) { open(static_cast<std::size_t>(row)); });
    connect(table_, &widgets::PlainTable::removeAsked, this,
            [this](int row) { strike(static_cast<std::size_t>(row)); });
    hide();
}

void WriteUpPart::layDayLines() {
    rods_ = new widgets::EntryLine(this);
    rods_->setWhenEmpty(tr("not known"));
    addField(tr("Rods out"), rods_,
             tr("Of each stay that is ticked. A stay whose rods are not known counts in no rate"));
    bait_ = new widgets::EntryLine(this);
    bait_->setWhenEmpty(tr("not known"));
    addField(tr("Bait"), bait_, tr("Of each stay that is ticked; several with commas"));
    connect(rods_, &QLineEdit::textChanged, this,
            [this](const QString& text) { rods_->setRight(areRods(text.trimmed())); });
    connect(rods_, &widgets::EntryLine::goneOn, bait_, [this] { bait_->setFocus(); });
    connect(bait_, &widgets::EntryLine::goneOn, this, &WriteUpPart::focusRows);
    for (widgets::EntryLine* line : {rods_, bait_}) {
        connect(line, &widgets::EntryLine::writeAsked, this, &WriteUpPart::focusRows);
        connect(line, &widgets::EntryLine::left, this, &WriteUpPart::done);
    }
}

void WriteUpPart::done() {
    leave();
    emit left();
}

bool WriteUpPart::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        done();
        return true;
    }
    return DayStep::eventFilter(watched, event);
}

/// The chosen stop on the chart, and in the cut as long as the plan still has its mark.
void WriteUpPart::showMark() {
    const auto stop = chosenStop();
    if (!stop || !water().frame) {
        return;
    }
    const KnownPlace& its = writeUp_.markOf(*stop);
    if (const auto planned = context_.open.planned()) {
        for (const marks::Mark& mark : planned->marks) {
            if (mark.lonLat == its.place) {
                context_.chart.selectMark(mark.rank);
            }
        }
    }
    context_.chart.lookAt(water().frame->toWater(its.place));
}

void WriteUpPart::begin() {
    show();
    offerDays();
    takeDay();
    rods_->setFocus(Qt::ShortcutFocusReason);
}

void WriteUpPart::offerDays() {
    days_ = {std::nullopt};
    which_->clear();
    which_->addItem(planWords());
    for (const auto& sheet : std::views::reverse(water().sheets)) {
        days_.emplace_back(sheet.day);
        which_->addItem(tr("%1, from its sheet").arg(wording::Words::day(sheet.day)));
    }
    const auto day = dayToWriteUp(water(), water().clock.dayOf(open_water::now()));
    which_->setCurrentIndex(static_cast<int>(std::ranges::find(days_, day) - days_.begin()));
}

QString WriteUpPart::planWords() const {
    return tr("%1, the plan as it is now").arg(wording::Words::day(water().plan.day.day));
}

void WriteUpPart::takeDay() {
    setWords(wrong_, {});
    writeUp_ = {};
    rods_->clear();
    bait_->clear();
    // As many as ride in the boat, but never more than the house allows.
    const int rods = water().plan.tackle.rods;
    rods_->offer(QString::number(std::min(rods, water().houseRules.rodLimit.value_or(rods))));
    bait_->complete(baitsByUse(water().log));
    table_->clearSelection();
    const auto day = days_[static_cast<std::size_t>(std::max(0, which_->currentIndex()))];
    const auto sheet = std::ranges::find(
        water().sheets, day, [](const water::BoatSheet& one) { return std::optional(one.day); });
    isAwaited_ = sheet == water().sheets.end();
    if (!isAwaited_) {
        takeSheet(*sheet);
        return;
    }
    setWords(about_, tr("Working out the marks of the plan…"));
    table_->hide();
    context_.open.whenPlanIsCurrent([part = QPointer<WriteUpPart>(this)](const auto& plan) {
        if (part && part->isAwaited_) {
            part->takePlan(plan);
        }
    });
}

void WriteUpPart::takePlan(const base::Result<void>& plan) {
    isAwaited_ = false;
    const auto planned = context_.open.planned();
    if (!plan || !planned) {
        setWords(about_, tr("There is no plan to write up: add the stays one by one."));
        setWords(wrong_, plan ? QString() : wording::Tongue::sentence(plan.error()));
        return;
    }
    takeSheet(wording::boatSheetOf(*planned, words()));
}

void WriteUpPart::takeSheet(const water::BoatSheet& sheet) {
    writeUp_ = WriteUp(sheet);
    const auto planned = context_.open.planned();
    context_.chart.setShown(chart::LayerKind::marks, planned && areItsMarks(sheet, *planned));
    refresh();
}

DayStepLine WriteUpPart::refresh() {
    if (!isUnderWay()) {
        return {};
    }
    which_->setItemText(0, planWords());
    if (isAwaited_) {
        return {};
    }
    const auto water = context_.open.water();
    setWords(about_,
             writeUp_.size() == 0
                 ? tr("The plan has no stop: choose marks under Tomorrow, or add stays one by one.")
                 : tr("%1, as planned. %2.")
                       .arg(wording::Words::day(writeUp_.day()), writeUp_.line(*water)));
    const bool isToCome = writeUp_.day() > water->clock.dayOf(open_water::now());
    setWords(toCome_, isToCome ? tr("This day is still to come: nothing of it has been fished.")
                               : QString());
    // The rows own what they show: they may be painted while another day is being taken.
    const auto stops = std::make_shared<const WriteUp>(writeUp_);
    table_->setRows(
        static_cast<int>(stops->size()),
        [stops, water](int row) { return stops->cells(static_cast<std::size_t>(row), *water); },
        [stops, water](int row) { return stops->look(static_cast<std::size_t>(row), *water); });
    table_->setVisible(stops->size() > 0);
    return {};
}

void WriteUpPart::leave() {
    if (isUnderWay()) {
        context_.chart.setShown(chart::LayerKind::marks, false);
    }
    isAwaited_ = false;
    hide();
}

void WriteUpPart::focusRows() {
    if (writeUp_.size() == 0) {
        return;
    }
    if (table_->chosen() < 0) {
        table_->choose(0);
    }
    table_->setFocus(Qt::OtherFocusReason);
}

std::optional<std::size_t> WriteUpPart::chosenStop() const {
    const int row = table_->chosen();
    return row >= 0 && static_cast<std::size_t>(row) < writeUp_.size()
               ? std::optional(static_cast<std::size_t>(row))
               : std::nullopt;
}

std::optional<logbook::StayId> WriteUpPart::chosenStay() const {
    const auto stop = chosenStop();
    return stop ? writeUp_.stayOf(*stop, water()) : std::nullopt;
}

StayOffered WriteUpPart::saidOfDay() const {
    const QString rods = rods_->text().trimmed();
    return {{}, areRods(rods) ? rods : QString(), bait_->text().trimmed()};
}

void WriteUpPart::take(logbook::StayId stay) {
    if (const auto stop = chosenStop()) {
        writeUp_.take(*stop, stay);
        refresh();
    }
}

void WriteUpPart::tick(std::size_t stop) {
    if (writeUp_.stayOf(stop, water())) {
        return; // It is in the log already.
    }
    const StayOffered said = saidOfDay();
    logbook::Stay stay = writeUp_.plannedStay(stop);
    stay.rods = said.rods.isEmpty() ? std::nullopt : std::optional(said.rods.toInt());
    stay.bait = said.bait.toStdString();
    const auto standing = water::KnownStays(water()).standingOf(stay);
    if (standing.is == water::StayStanding::Is::doubtful) {
        setWords(wrong_,
                 wording::saidOfDoubtful(stay, standing.of.value_or(logbook::StayId()), water()));
        return;
    }
    QStringList doubts;
    for (const water::StayDoubt& doubt :
         water::doubtsAbout(stay, water(), context_.open.derived(), open_water::now())) {
        doubts += wording::said(doubt, water().clock, words());
    }
    setWords(wrong_, doubts.join('\n'));
    if (writeUp_.isStruck(stop)) {
        writeUp_.strike(stop);
    }
    if (const auto id = edits::addStays(context_.open, tr("Add stay"), {stay}); id.isGiven()) {
        writeUp_.take(stop, id);
    }
    refresh();
    emit chosen();
}

void WriteUpPart::open(std::size_t stop) {
    if (writeUp_.stayOf(stop, water())) {
        emit changeAsked();
    } else {
        emit entryAsked(writeUp_.markOf(stop), writeUp_.plannedStay(stop), saidOfDay());
    }
}

void WriteUpPart::strike(std::size_t stop) {
    if (!writeUp_.stayOf(stop, water())) {
        writeUp_.strike(stop);
        refresh();
    } else {
        setWords(wrong_, tr("This stop is in the log: undo takes it out, or remove its stay."));
    }
}

} // namespace days::looking_back
