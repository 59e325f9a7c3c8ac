@echo off
rem Starts Baywright from its repository. Builds it on the first start and again when its sources have changed.
rem
rem BAYWRIGHT_BUILD=never   start what is built, whatever its age
rem BAYWRIGHT_JAVA_OPTS     further options for java
setlocal EnableExtensions DisableDelayedExpansion

set "home=%~dp0"
set "home=%home:~0,-1%"
set "app=%home%\suite-swing\target"
set "jar=%app%\baywright.jar"
set "built=%home%\target\launcher-built"
set "lock=%home%\target\launcher-lock"
set "version="
set "major=0"

set "java=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
where /q "%java%" 2>nul || if not exist "%java%" (
    echo baywright: needs Java 17 or later: install a JDK or set JAVA_HOME>&2
    exit /b 3
)
for /f "tokens=3" %%v in ('""%java%" -version 2>&1" ^| findstr /c:" version "') do if not defined version set "version=%%~v"
for /f "delims=.-+" %%m in ("%version%") do set "major=%%m"
if %major% lss 17 (
    echo baywright: needs Java 17 or later, but %java% is version %version%: install a JDK 17 or set JAVA_HOME>&2
    exit /b 3
)

if /i "%BAYWRIGHT_BUILD%"=="never" (
    if exist "%jar%" goto start
    echo baywright: is not built, and BAYWRIGHT_BUILD=never forbids to build it>&2
    exit /b 3
)
call :fresh && goto start
if not exist "%home%\target" mkdir "%home%\target"

rem One build at a time: a folder is made by one start only.
:wait
mkdir "%lock%" 2>nul && goto build
echo baywright: waiting for another start that is building; if there is none, remove %lock%>&2
timeout /t 2 /nobreak >nul
goto wait

:build
call :fresh && goto unlock
where /q mvn || (
    echo baywright: needs Maven 3.8 or later to build itself: install it and put it on the PATH>&2
    rmdir "%lock%"
    exit /b 3
)
echo baywright: building, this takes a moment ...>&2
del /q "%app%\baywright-*.jsa" 2>nul
rem A copy of the sources as they were when the build began tells later whether they have changed.
call :compare /mir
pushd "%home%"
call mvn -B -q -o -Dstyle.color=never -Dmaven.test.skip=true package >nul 2>&1 || call mvn -B -q -Dstyle.color=never -Dmaven.test.skip=true package >&2
if errorlevel 1 (
    popd
    rmdir /s /q "%built%"
    rmdir "%lock%"
    echo baywright: the build failed; the reasons stand above>&2
    exit /b 3
)
popd
:unlock
rmdir "%lock%"

:start
rem Short runs start quicker with the first compiler alone. The window runs long enough for both, but while it starts the second
rem would take the time of what is waited for: it begins ten times later than usual.
set "both=-XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=6000 -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000"
set "tiers=-XX:TieredStopAtLevel=1"
if "%~1"=="" set "tiers=%both%"
if /i "%~1"=="open" set "tiers=%both%"
if /i "%~1"=="demo" (
    echo  %* | findstr /c:" --no-window" >nul || set "tiers=%both%"
)
set "archive=%app%\baywright-%version%.jsa"
if not exist "%archive%" "%java%" "-XX:ArchiveClassesAtExit=%archive%" -XX:+UseSerialGC -Xlog:disable -Xlog:all=off "-Dbaywright.home=%home%" -jar "%jar%" warm-up >nul 2>&1
"%java%" -Xshare:auto "-XX:SharedArchiveFile=%archive%" -XX:+UseSerialGC %tiers% -Xlog:disable -Xlog:all=error:stderr "-Dbaywright.home=%home%" %BAYWRIGHT_JAVA_OPTS% -jar "%jar%" %*
exit /b %errorlevel%

:fresh
if not exist "%jar%" exit /b 1
if not exist "%built%" exit /b 1
call :compare /l /mir
exit /b %errorlevel%

rem Compares the sources with their copy, or copies them; 1 when they differed.
:compare
set "differs=0"
set "list="
if /i "%~1"=="/l" set "list=/l"
for %%d in (suite-core suite-swing) do (
    robocopy "%home%\%%d\src\main" "%built%\%%d\main" %* /njh /njs /nfl /ndl /np >nul
    if errorlevel 1 set "differs=1"
    robocopy "%home%\%%d" "%built%\%%d\pom" pom.xml %list% /njh /njs /nfl /ndl /np >nul
    if errorlevel 1 set "differs=1"
)
exit /b %differs%
