@echo off
rem Starts Hingewise on Windows. What is missing or older than its source is built first; everything said about that
rem goes to standard error. Exit code 2: it could not be started.
setlocal
set "HOME_DIR=%~dp0"
set "HOME_DIR=%HOME_DIR:~0,-1%"
set "TARGET=%HOME_DIR%\target"
set "JAR=%TARGET%\hingewise-0.1.0.jar"
set "ARCHIVE=%TARGET%\hingewise.jsa"
set "LOCK=%TARGET%\hingewise.lock"
set "FLAGS=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
rem A sheet or a study may take hours; for that the faster machine code is worth the time it takes to make.
if "%~1"=="sift" set "FLAGS=-XX:+UseSerialGC"
if "%~1"=="simulate" set "FLAGS=-XX:+UseSerialGC"

set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo hingewise: there is no Java here; install Java 17 or later, or set JAVA_HOME to it>&2
    exit /b 2
)
rem Only a Java of 17 or later can say so with this option.
"%JAVA%" --class-path . --list-modules 2>nul | findstr /r /c:"^java\.base@1[7-9]" /c:"^java\.base@[2-9][0-9]" >nul
if errorlevel 1 (
    echo hingewise: this Java is older than 17; install Java 17 or later, or set JAVA_HOME to it>&2
    exit /b 2
)

call :stale
if errorlevel 1 goto start
if not exist "%TARGET%" mkdir "%TARGET%"
:enter
mkdir "%LOCK%" 2>nul
if not errorlevel 1 goto entered
if not defined WAITED echo hingewise: another start is building; waiting for it (if none is, delete "%LOCK%")>&2
set "WAITED=1"
ping -n 2 127.0.0.1 >nul
goto enter
:entered
call :stale
if errorlevel 1 goto leave
where mvn >nul 2>&1
if errorlevel 1 (
    echo hingewise: has to be built first, and there is no Maven here; install Maven 3.8 or later ^(the command mvn^)>&2
    rmdir "%LOCK%"
    exit /b 2
)
echo hingewise: building (the first time this fetches libraries and takes a few minutes)>&2
pushd "%HOME_DIR%"
call mvn -B -q -Dstyle.color=never -Dmaven.test.skip=true package 1>&2 <nul
set "RESULT=%ERRORLEVEL%"
popd
if not "%RESULT%"=="0" (
    echo hingewise: the build failed; the lines above say why>&2
    rmdir "%LOCK%"
    exit /b 2
)
if exist "%ARCHIVE%" del "%ARCHIVE%"
for %%F in ("%HOME_DIR%\demo-cases\*.json") do set "EXAMPLE=%%F"
"%JAVA%" %FLAGS% -XX:ArchiveClassesAtExit="%ARCHIVE%" -Xlog:disable -jar "%JAR%" assess "%EXAMPLE%" >nul 2>&1 <nul
rem An archive that was not finished could bring Java down.
"%JAVA%" %FLAGS% -XX:SharedArchiveFile="%ARCHIVE%" -Xshare:auto -Xlog:disable -version >nul 2>&1
if errorlevel 1 del "%ARCHIVE%" 2>nul
echo hingewise: built>&2
:leave
rmdir "%LOCK%"
:start
"%JAVA%" %FLAGS% -XX:SharedArchiveFile="%ARCHIVE%" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -jar "%JAR%" %*
exit /b %ERRORLEVEL%

rem Result 0: there is nothing built, or a source is newer than it.
:stale
if not exist "%JAR%" exit /b 0
if not exist "%TARGET%\lib" exit /b 0
set "HINGEWISE_HOME=%HOME_DIR%"
powershell -NoProfile -Command "$h=$env:HINGEWISE_HOME; $b=(Get-Item -LiteralPath \"$h\target\hingewise-0.1.0.jar\").LastWriteTimeUtc; $n='src\main','rules','demo-cases','images-own','pom.xml' | ForEach-Object { Join-Path $h $_ } | Where-Object { Test-Path -LiteralPath $_ } | Get-ChildItem -Recurse -File | Where-Object { $_.LastWriteTimeUtc -gt $b }; exit [int](-not $n)"
exit /b %ERRORLEVEL%
