# Warnings for our own code only: targets link this PRIVATE, so libraries' headers are not judged by it.
add_library(project_warnings INTERFACE)
target_compile_options(project_warnings INTERFACE
    -Werror -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wdouble-promotion -Wold-style-cast
    -Wcast-qual -Wcast-align -Woverloaded-virtual -Wnon-virtual-dtor -Wnull-dereference -Wformat=2 -Wundef
    -Wextra-semi -Wimplicit-fallthrough
    $<$<CXX_COMPILER_ID:GNU>:-Wduplicated-cond -Wduplicated-branches -Wlogical-op -Wuseless-cast -Wsuggest-override>
    # g++ 12 at -O3 takes "text" + std::string for an overlapping copy (GCC bug 105651), and a string that is moved
    # out of a std::optional for a null pointer; the other builds keep both warnings.
    $<$<AND:$<CXX_COMPILER_ID:GNU>,$<CONFIG:Release>>:-Wno-restrict -Wno-null-dereference>)
