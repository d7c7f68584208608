#pragma once

#include <QGuiApplication>
#include <QTemporaryDir>

#include <memory>

namespace pumpwright {

/// What Qt needs to draw text without a display, for as long as this object lives. Does nothing where an
/// application runs already.
class Offscreen {
public:
    Offscreen();

private:
    int m_argumentCount = 1;
    char m_name[11] = "pumpwright";
    char* m_arguments[2] = {m_name, nullptr};
    QTemporaryDir m_runtime; ///< Qt asks for a private folder
    std::unique_ptr<QGuiApplication> m_application;
};

} // namespace pumpwright
