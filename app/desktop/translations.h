#pragma once

#include <QStringList>

class QLocale;

namespace pumpwright {

/// Makes the program speak the locale's language from now on, as far as there are texts in it; else English.
/// Windows that are open already keep theirs. Needs the QApplication.
void speak(const QLocale& locale);

/// The languages that there are texts in, beside English: "de".
QStringList spokenLanguages();

} // namespace pumpwright
